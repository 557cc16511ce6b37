using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A leg takes more than a full battery or tank.</summary>
public sealed class LegOutOfRange : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL703",
        Slug = "leg-out-of-range",
        Severity = Severity.Error,
        Summary = "A leg takes more than a full battery or tank.",
        Why = "Leaving with more doesn't help here: the leg has to be cut in two, or driven another way.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 100 %
                leg coast
                    distance 700 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 100 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Fix = "Put a stop on the way, or drive slower.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs.Where(Is))
        {
            var (taken, distance) = (trip.Compute(Charge.Taken, leg), trip.Compute(LegResults.Distance, leg));
            var what = Drives.Engine(trip.Rig) is null ? "battery" : "tank";
            yield return Report(
                trip, PlaceOf(leg),
                $"The leg to {leg.PlaceName} takes {Percent(taken.Value)} of a full {what}{Mark(taken)}: at this pace a full one lasts {Distance(trip, distance.Value / taken.Value)} of its {Distance(trip, distance.Value)}. Put a stop on the way, or drive slower.");
        }
    }

    /// <summary>Whether even a full battery or tank doesn't last.</summary>
    internal static bool Is(LegSubject leg) => leg.Trip.Compute(Charge.Taken, leg) is { IsComputed: true, Value: var taken } && Limits.Exceeds(taken, 1);
}
