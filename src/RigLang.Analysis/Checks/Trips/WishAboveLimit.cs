using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The wished speed is above the leg's speed limit.</summary>
public sealed class WishAboveLimit : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL715",
        Slug = "wish-above-limit",
        Severity = Severity.Note,
        Summary = "The wished speed is above the leg's `speed-limit`; the limit counts.",
        Why = "The times are right, but a reader of the file will take the wish for the plan.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                    speed 100 km/h
                    speed-limit 80 km/h
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                    speed 80 km/h
                    speed-limit 80 km/h
            """),
        Fix = "Wish the limit, or less.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            if (leg.Leg.Find(LegFacts.SpeedLimit)?.MeasureOf("value") is not { } limit)
            {
                continue;
            }

            foreach (var (line, role) in leg.Leg.All(LegFacts.Journey.Speed).Select(line => (line, "value")).Concat(leg.Leg.All(LegFacts.Journey.Section).Select(line => (line, "speed"))))
            {
                if (line.MeasureOf(role) is { } wish && Limits.Exceeds(wish.Value, limit.Value))
                {
                    var finding = Report(trip, line.PlaceOf(role), $"{wish.Text} is wished, {limit.Text} is the limit, which counts. Wish no more than the limit.");
                    yield return IsOwn(trip, line.Place) ? finding with { Fixes = [new Fix($"Write {limit.Text}", line.PlaceOf(role), limit.Text)] } : finding;
                }
            }
        }
    }
}
