using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A leg is driven faster than the driver likes.</summary>
public sealed class WishAboveComfort : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL729",
        Slug = "wish-above-comfort",
        Severity = Severity.Note,
        Summary = "A leg is driven faster than the trip's `comfort-speed`.",
        Why = "The times shown are those of the leg's speed; a plan keeps to the comfort-speed. One of the two isn't meant.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                comfort-speed 90 km/h
                start-charge 95 %
                leg coast
                    distance 150 km
                    climb 0 m
                    speed 100 km/h
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                comfort-speed 100 km/h
                start-charge 95 %
                leg coast
                    distance 150 km
                    climb 0 m
                    speed 100 km/h
            """),
        Fix = "Wish less for the leg, or find more comfortable.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (trip.Block.Find(TripFacts.ComfortSpeed)?.MeasureOf(Signature.ValueRole) is not { } comfort)
        {
            yield break;
        }

        foreach (var leg in trip.Legs)
        {
            if (trip.Compute(Driving.Fastest, leg) is { IsComputed: true } fastest && Limits.Exceeds(fastest.Value, comfort.Value))
            {
                yield return Report(
                    trip, leg.Leg.Find(LegFacts.Journey.Speed)?.Place ?? PlaceOf(leg),
                    $"{Speed(trip, fastest.Value)} on the leg to {leg.PlaceName} is more than the comfort-speed of {comfort.Text}. Wish less, or raise the comfort-speed.") with
                {
                    Related = [new Related(trip.Block.Find(TripFacts.ComfortSpeed)!.Place, "the comfort-speed")],
                };
            }
        }
    }
}
