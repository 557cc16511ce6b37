using System.Collections.Immutable;
using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Law;

/// <summary>A leg is driven faster than German law allows with a trailer.</summary>
public sealed class SpeedOverLawOnTrip : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new SpeedOverLaw().Declaration;

    public override ImmutableArray<Lever> Cures => [Levers.DriveSlower];

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (LawCheck.RulesOf(trip.Rig) != "de" || !trip.Rig.HasTrailer)
        {
            yield break;
        }

        foreach (var leg in trip.Legs)
        {
            var way = trip.Compute(Driving.Driven, leg);
            var fastest = way is { Missing: null } && !way.Value.Stretches.IsEmpty ? way.Value.Stretches.Max(stretch => stretch.Speed) : trip.Compute(Driving.Wish, leg).Value;
            if (SpeedOverLaw.Message(trip.Rig, fastest, $"{Speed(trip, fastest)} on the leg to {leg.PlaceName}") is { } message)
            {
                yield return Report(trip, leg.Leg.Find(LegFacts.Journey.Speed)?.Place ?? PlaceOf(leg), message.Text) with { Severity = message.Severity, About = leg.Leg.Key };
            }
        }
    }
}
