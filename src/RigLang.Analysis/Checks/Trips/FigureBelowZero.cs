using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A post's power, a wind or a price is below what can be.</summary>
public sealed class FigureBelowZero : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL726",
        Slug = "figure-below-zero",
        Severity = Severity.Error,
        Summary = "A post without power; a reserve, a wind or a price below zero.",
        Why = "Nothing can be computed with it; the results that need it wait.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    charger 0 kW dc
                    charge-to 60 %
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    charger 20 kW dc
                    charge-to 90 %
            """),
        Fix = "Write the true figure; from where a wind comes is told by words, never by a sign.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (trip.Block.Find(TripFacts.Reserve) is { } reserve && reserve.MeasureOf(Signature.ValueRole) is { Value: < 0 } spare)
        {
            yield return Report(trip, reserve.PlaceOf(Signature.ValueRole), $"A reserve of {spare.Text} would let the trip go on with nothing left. Write it without a sign.");
        }

        foreach (var leg in trip.Legs)
        {
            if (leg.Leg.Find(LegFacts.Journey.Wind) is { } wind && wind.MeasureOf("speed") is { Value: < 0 } speed)
            {
                yield return Report(trip, wind.PlaceOf("speed"), $"A wind of {speed.Text} from where? Write its speed without a sign, and `head`, `tail`, `left` or `right` behind it.");
            }
        }

        foreach (var stop in trip.Stops)
        {
            if (stop.Block.Find(StopFacts.Charger) is { } post && post.MeasureOf("power") is { Value: <= 0 } power)
            {
                yield return Report(trip, post.PlaceOf("power"), $"A post of {power.Text} never charges anything. Write its power.");
            }

            if (stop.Block.Find(StopFacts.Price) is { } price && price.MeasureOf(Signature.ValueRole) is { Value: < 0 } money)
            {
                yield return Report(trip, price.PlaceOf(Signature.ValueRole), $"A price of {money.Text} would pay you for charging. Write it without a sign.");
            }
        }
    }
}
