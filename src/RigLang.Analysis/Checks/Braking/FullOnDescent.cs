using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Braking;

/// <summary>The battery is too full to take what a descent gives.</summary>
public sealed class FullOnDescent : TripCheck
{
    /// <summary>Less than this share of the battery isn't worth a word.</summary>
    private const double Worth = 0.005;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL731",
        Slug = "full-on-descent",
        Severity = Severity.Warning,
        Summary = "The battery is too full to take what a descent gives.",
        Why = "A full battery takes nothing back. What regeneration would have held, the brakes have to: energy is lost, and the brakes get hot from the first bend on.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start pass
                start-charge 100 %
                leg valley
                    speed 60 km/h
                    section 15 km at -7 %
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start pass
                start-charge 70 %
                leg valley
                    speed 60 km/h
                    section 15 km at -7 %
            """),
        Fix = "Leave the top with less in the battery: charge below, not above.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (Drives.Battery(trip.Rig)?.Find(ElectricFacts.UsableEnergy)?.MeasureOf(Signature.ValueRole) is not { } usable)
        {
            yield break;
        }

        foreach (var leg in trip.Legs)
        {
            if (LegBraking.Refused.Compute(leg) is { IsComputed: true } refused && refused.Value > Worth * usable.Value && trip.Compute(Charge.AtStart, leg) is { IsComputed: true } start)
            {
                yield return Report(
                    trip, PlaceOf(leg),
                    $"On the way down to {leg.PlaceName} the battery is too full to take {QuantityWriter.Write(refused.Value, QuantityKinds.Energy, DisplaySystem.Metric)}{Mark(refused)} that regeneration would bring: the brakes take it. Begin the leg with some {Percent(refused.Value / usable.Value)} less than {Percent(start.Value)}.");
            }
        }
    }
}
