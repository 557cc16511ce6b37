using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A wind has a speed and no direction.</summary>
public sealed class WindWithoutDirection : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL722",
        Slug = "wind-without-direction",
        Severity = Severity.Warning,
        Summary = "A wind has a speed and no direction; it is counted as a headwind.",
        Why = "30 km/h from ahead and from behind are two different trips.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                    wind 20 km/h
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                    wind 20 km/h tail
            """),
        Fix = "Write `head`, `tail`, `left` or `right` behind it, or `from` a bearing with the leg's `heading`.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            if (leg.Leg.Find(LegFacts.Journey.Wind) is not { } line || Judgeable.IsBroken(trip.Parts.Trip, line) || line.MeasureOf("speed") is not { Value: not 0 } speed || line.WordOf("side") is not null || line.MeasureOf("from") is not null)
            {
                continue;
            }

            var finding = Report(trip, line.Place, $"A wind of {speed.Text} from where? Write `head`, `tail`, `left` or `right` behind it, or `from` a bearing; until then it is counted from ahead.");
            var behind = line.PlaceOf("speed");
            yield return IsOwn(trip, line.Place)
                ? finding with { Fixes = [new Fix("Write `head`", behind, behind.Text + " head"), new Fix("Write `tail`", behind, behind.Text + " tail")] }
                : finding;
        }
    }
}
