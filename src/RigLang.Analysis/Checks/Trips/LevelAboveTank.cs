using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>More fuel is said to be in the tank than it holds.</summary>
public sealed class LevelAboveTank : TripCheck
{
    /// <summary>Where a stop charges or refuels to, as a share of the whole; doesn't apply where it does neither.</summary>
    internal static Computation<StopSubject, double> GoalOf { get; } = new("share wanted at the stop", (read, stop) =>
    {
        var fact = Drives.Engine(stop.Trip.Rig) is null ? StopFacts.ChargeTo : StopFacts.RefuelTo;
        return read.LineIfWritten(stop.Block, fact)?.MeasureOf(Signature.ValueRole) is { } level ? Charge.Share(read, stop.Trip.Rig, level) : read.NotApplicable();
    });

    private static readonly Computation<TripStudy, double> AtStart = new("share at the start", (read, trip) =>
        read.LineIfWritten(trip.Block, TripFacts.StartFuel)?.MeasureOf(Signature.ValueRole) is { } level ? Charge.Share(read, trip.Rig, level) : read.NotApplicable());

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL724",
        Slug = "level-above-tank",
        Severity = Severity.Warning,
        Summary = "More fuel is said to be in the tank than it holds.",
        Why = "A slip in the level or in the tank's volume; the range would come out too long.",
        Bad = TripExample.Petrol("""
            trip out
                rig solo
                start home
                start-fuel 55 L
                leg coast
                    distance 40 km
                    climb 0 m
            """),
        Good = TripExample.Petrol("""
            trip out
                rig solo
                start home
                start-fuel 35 L
                leg coast
                    distance 40 km
                    climb 0 m
            """),
        Fix = "Mend the level, or the volume of the vehicle's `tank`.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (Drives.Engine(trip.Rig) is null)
        {
            yield break;
        }

        if (trip.Compute(AtStart, trip) is { IsComputed: true } start && Limits.Exceeds(start.Value, 1))
        {
            yield return Over(trip, trip.Block.Find(TripFacts.StartFuel)!);
        }

        foreach (var stop in trip.Stops)
        {
            if (trip.Compute(GoalOf, stop) is { IsComputed: true } goal && Limits.Exceeds(goal.Value, 1))
            {
                yield return Over(trip, stop.Block.Find(StopFacts.RefuelTo)!);
            }
        }
    }

    private Finding Over(TripStudy trip, Fact line)
    {
        var tank = QuantityWriter.Write(trip.Rig.Compute(Drives.TankVolume, trip.Rig).Value, QuantityKinds.Volume, DisplaySystem.Metric);
        return Report(trip, line.PlaceOf(Signature.ValueRole), $"`{line.Declaration.Keyword} {line.PlaceOf(Signature.ValueRole).Text}` is more than the tank holds, {tank}. Mend one of the two.");
    }
}
