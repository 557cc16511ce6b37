using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>Nobody says how much a leg climbs, so its energy isn't computed.</summary>
public sealed class HillsMissing : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL710",
        Slug = "hills-missing",
        Severity = Severity.Warning,
        Summary = "Nobody says how much a leg climbs, so its energy is not computed, and that of all legs behind it neither.",
        Why = "500 m of climb cost a heavy rig what 20 km of level road do; to call an unknown road level would be a guess.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 310 m
                    descent 350 m
            """),
        Fix = "Write `climb` and `descent`, `section` lines, or a `gpx`; `climb 0 m` for a level road.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            var missing = trip.Compute(Driving.Driven, leg).Missing;
            if (missing is null || Judgeable.IsUnsettled(trip.Parts.Trip) || missing.Block != leg.Leg || (missing.Fact != LegFacts.Journey.Climb && missing.Fact != LegFacts.Journey.Descent))
            {
                continue;
            }

            var track = Driving.WayOf(leg).Form == WayForm.Track ? "its track has no heights, and " : "";
            yield return Report(
                trip, PlaceOf(leg),
                missing.Fact == LegFacts.Journey.Climb
                    ? $"Energy to {leg.PlaceName} isn't computed: {track}no line says how much the road climbs. Write `climb` and `descent`{(track.Length > 0 ? "" : ", or `section` lines, or a `gpx`")}; `climb 0 m` for a level road."
                    : $"Energy to {leg.PlaceName} isn't computed: `climb` is there, `descent` isn't. Write `descent` too; `descent 0 m` where the road only climbs.");
        }
    }
}
