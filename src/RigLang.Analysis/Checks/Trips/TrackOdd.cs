using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A track looks as if something went wrong with it.</summary>
public sealed class TrackOdd : TripCheck
{
    // Our choices: a gap that no planner leaves, a place that is the same place, a road that no trailer is pulled up.
    private const double WideGap = 3000, SamePlace = 2000, OtherPlace = 5000, SteepestRoad = 0.25;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL714",
        Slug = "track-odd",
        Severity = Severity.Warning,
        Summary = "A track has a wide gap, lacks heights, is steeper than roads are, or doesn't begin where the track before it ended.",
        Why = "A straight line over a gap is shorter and flatter than the road; a track driven the other way turns climbs into descents.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    gpx "gap.gpx"
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    gpx "road.gpx"
            """),
        Beside =
        [
            ("gap.gpx", """
                <gpx version="1.1" creator="a recorder" xmlns="http://www.topografix.com/GPX/1/1">
                  <trk><trkseg>
                    <trkpt lat="-33.000" lon="150.000"><ele>20</ele></trkpt>
                    <trkpt lat="-33.010" lon="150.000"><ele>24</ele></trkpt>
                    <trkpt lat="-33.200" lon="150.000"><ele>60</ele></trkpt>
                  </trkseg></trk>
                </gpx>
                """),
            ("road.gpx", """
                <gpx version="1.1" creator="a recorder" xmlns="http://www.topografix.com/GPX/1/1">
                  <trk><trkseg>
                    <trkpt lat="-33.000" lon="150.000"><ele>20</ele></trkpt>
                    <trkpt lat="-33.010" lon="150.000"><ele>24</ele></trkpt>
                    <trkpt lat="-33.020" lon="150.000"><ele>60</ele></trkpt>
                  </trkseg></trk>
                </gpx>
                """),
        ],
        Fix = "Record or plan that stretch again, or tell the leg by `distance`, `climb` and `descent`.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            if (Driving.WayOf(leg).Profile is { } track)
            {
                foreach (var oddity in Oddities(trip, leg, track))
                {
                    yield return Report(trip, leg.Gpx!.Line.PlaceOf("value"), oddity);
                }
            }
        }
    }

    private static IEnumerable<string> Oddities(TripStudy trip, LegSubject leg, TrackProfile track)
    {
        if (track.LongestGap > WideGap)
        {
            yield return $"The track has a gap of {Distance(trip, track.LongestGap)} that begins {Distance(trip, track.LongestGapAt)} from its start; it is bridged by a straight line. Record or plan that stretch again.";
        }

        if (track.HeightsKnown is > 0 and < 1)
        {
            yield return $"Only {Percent(track.HeightsKnown)} of the track's points have a height; between them it is drawn straight. Let a planner fill in the heights.";
        }

        var steepest = Math.Max(track.SteepestUp, -track.SteepestDown);
        if (steepest > SteepestRoad)
        {
            yield return $"The track is {QuantityWriter.Write(steepest, QuantityKinds.Slope, DisplaySystem.Metric)} steep somewhere, which no road is; its heights are off. Let a planner fill in the heights.";
        }

        if (leg.Before is not { } before || Driving.WayOf(before).Profile is not { } earlier || Between(earlier.Last, track.First) is not (var gap and > OtherPlace))
        {
            yield break;
        }

        yield return Between(earlier.Last, track.Last) < SamePlace
            ? $"The track runs the other way: it ends where that of the leg to {before.PlaceName} ended. Turn it round, or its climbs count as descents."
            : $"The track begins {Distance(trip, gap)} from where that of the leg to {before.PlaceName} ended. Is it this leg's?";
    }

    private static double Between((double Latitude, double Longitude) one, (double Latitude, double Longitude) other) =>
        Geodesy.Distance(one.Latitude, one.Longitude, other.Latitude, other.Longitude);
}
