using System.Collections.Immutable;
using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>At the highest speed of a leg the rig is unstable.</summary>
public sealed class UnstableOnLeg : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new UnstableAtSpeed().Declaration;

    public override ImmutableArray<Lever> Cures => [Levers.DriveSlower];

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            if (LegHandling.Damping.Compute(leg) is { IsComputed: true, Value: < 0 } damping)
            {
                var speed = Speed(trip, trip.Compute(LegHandling.FastestSpeed, leg).Value);
                yield return Report(trip, leg.Leg.Find(LegFacts.Journey.Speed)?.Place ?? PlaceOf(leg), UnstableAtSpeed.Message($"{speed} on the leg to {leg.PlaceName}", damping)) with { About = leg.Leg.Key };
            }
        }
    }

    public override string? Figure(Study study, Finding finding) =>
        LegOf(study, finding) is { } leg && LegHandling.Damping.Compute(leg) is { IsComputed: true } damping ? UnstableAtSpeed.Damping(damping) : null;
}
