using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A leg tells its hills in two ways.</summary>
public sealed class WayToldTwice : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL712",
        Slug = "way-told-twice",
        Severity = Severity.Warning,
        Summary = "A leg tells its hills in two ways.",
        Why = "Only one of them counts: `section` lines before a `gpx`, either before `climb` and `descent`. The other says nothing and will mislead a reader.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg pass
                    section 20 km at 1 %
                    section 14 km at 6 %
                    climb 900 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg pass
                    section 20 km at 1 %
                    section 14 km at 6 %
            """),
        Fix = "Keep the way that you trust, and take the other lines out.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            var way = Driving.WayOf(leg);
            if (way.Form == WayForm.Totals)
            {
                continue;
            }

            // A track without heights leaves the hills to climb and descent.
            FactDeclaration[] idle = way.Form == WayForm.Sections
                ? [LegFacts.Journey.Gpx, LegFacts.Journey.Climb, LegFacts.Journey.Descent]
                : way.IsOrdered ? [LegFacts.Journey.Climb, LegFacts.Journey.Descent] : [];
            var lines = idle.SelectMany(fact => leg.Leg.All(fact)).ToList();
            if (lines.Count == 0)
            {
                continue;
            }

            var counts = way.Form == WayForm.Sections ? "the `section` lines count" : "the track's heights count";
            var finding = Report(trip, lines[0].Place, $"On the leg to {leg.PlaceName} {counts}, so {string.Join(", ", lines.Select(line => $"`{line.Declaration.Keyword}`"))} {(lines.Count == 1 ? "says" : "say")} nothing. Keep one way and take the other lines out.");
            yield return finding with { Related = [.. lines.Skip(1).Where(line => IsOwn(trip, line.Place)).Select(line => new Related(line.Place, "says nothing either"))] };
        }
    }
}
