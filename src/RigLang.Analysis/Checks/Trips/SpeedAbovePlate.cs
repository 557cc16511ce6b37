using System.Collections.Immutable;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Planning;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A leg is driven faster than the trailer's plate or a tyre allows.</summary>
public sealed class SpeedAbovePlate : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL716",
        Slug = "speed-above-plate",
        Severity = Severity.Error,
        Summary = "A leg is driven faster than the trailer's plate or a tyre's speed symbol allows.",
        Why = "A trailer tyre above its speed overheats from within and comes apart without warning.",
        Bad = TripExample.Electric("""
            trailer box
                mass 900 kg
                tongue 60 kg
                rolling 0.011
                drag-area 1.2 m²
                speed-rating 80 km/h
                aboard nothing

            rig pair
                vehicle van
                trailer box
                speed 80 km/h

            trip out
                rig pair
                start home
                start-charge 95 %
                leg coast
                    distance 90 km
                    climb 0 m
                    speed 100 km/h
            """),
        Good = TripExample.Electric("""
            trailer box
                mass 900 kg
                tongue 60 kg
                rolling 0.011
                drag-area 1.2 m²
                speed-rating 100 km/h
                aboard nothing

            rig pair
                vehicle van
                trailer box
                speed 80 km/h

            trip out
                rig pair
                start home
                start-charge 95 %
                leg coast
                    distance 90 km
                    climb 0 m
                    speed 100 km/h
            """),
        Fix = "Drive slower.",
        Source = "speed symbols: ISO 4000-1, ETRTO, UN R30",
    };

    public override ImmutableArray<Lever> Cures => [Levers.DriveSlower];

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (trip.Rig.Compute(RatedSpeeds.Of, trip.Rig).Value.MinBy(cap => cap.Speed) is not { } limit)
        {
            yield break;
        }

        foreach (var leg in trip.Legs)
        {
            var way = trip.Compute(Driving.Driven, leg);
            var fastest = way is { Missing: null } && !way.Value.Stretches.IsEmpty ? way.Value.Stretches.Max(stretch => stretch.Speed) : trip.Compute(Driving.Wish, leg).Value;
            if (Limits.Exceeds(fastest, limit.Speed))
            {
                var place = leg.Leg.Find(LegFacts.Journey.Speed)?.Place ?? PlaceOf(leg);
                yield return Report(trip, place, $"{Speed(trip, fastest)} on the leg to {leg.PlaceName} is more than {limit.Words} allows, {Speed(trip, limit.Speed)}. Drive slower.") with { About = leg.Leg.Key };
            }
        }
    }
}
