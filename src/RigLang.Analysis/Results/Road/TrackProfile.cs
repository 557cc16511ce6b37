using System.Runtime.CompilerServices;
using RigLang.Mechanics;
using GpxTrack = RigLang.Model.Tracks.Track;
using Measuring = RigLang.Mechanics.Track;

namespace RigLang.Analysis.Results.Road;

/// <summary>A recorded track, measured once: stretches with grades from smoothed heights, and what is odd about it.</summary>
public sealed class TrackProfile
{
    private static readonly ConditionalWeakTable<GpxTrack, TrackProfile> Known = [];

    private TrackProfile(GpxTrack track)
    {
        double[] latitudes = [.. track.Latitudes], longitudes = [.. track.Longitudes], heights = [.. track.Elevations];
        Points = track;
        var distances = Measuring.Distances(latitudes, longitudes);
        Stretches = Measuring.Stretches(latitudes, longitudes, heights);
        Length = Stretches.Sum(stretch => stretch.Length);
        HeightsKnown = heights.Count(height => !double.IsNaN(height)) / (double)Math.Max(1, heights.Length);
        var recorded = ElevationProfile.FillGaps(distances, heights);
        var smooth = ElevationProfile.Smooth(distances, recorded);
        RecordedClimb = ElevationProfile.Totals(distances, recorded).Climb;
        Hills = ElevationProfile.Hills(smooth);
        var totals = ElevationProfile.Totals(distances, smooth);
        (Climb, Descent, SteepestUp, SteepestDown) = (totals.Climb, totals.Descent, totals.SteepestUp, totals.SteepestDown);
        StartAltitude = smooth.Length > 0 ? smooth[0] : double.NaN;
        EndAltitude = smooth.Length > 0 ? smooth[^1] : double.NaN;
        for (var i = 1; i < distances.Length; i++)
        {
            if (distances[i] - distances[i - 1] is var gap && gap > LongestGap)
            {
                (LongestGap, LongestGapAt) = (gap, distances[i - 1]);
            }
        }
    }

    public GpxTrack Points { get; }

    /// <summary>Pieces that the road load can be summed over; grades are NaN where no height is known.</summary>
    public IReadOnlyList<TrackStretch> Stretches { get; }

    /// <summary>Along the road, m.</summary>
    public double Length { get; }

    /// <summary>Sum of all climbs after smoothing, m; NaN without heights.</summary>
    public double Climb { get; }

    /// <summary>Sum of all rises between the points as recorded, m; NaN without heights.</summary>
    public double RecordedClimb { get; }

    /// <summary>Rises of the smoothed heights, one after another: from each foot to its top.</summary>
    public int Hills { get; }

    /// <summary>Sum of all descents after smoothing, m.</summary>
    public double Descent { get; }

    /// <summary>Largest grade over a hundred metres, rise over run.</summary>
    public double SteepestUp { get; }

    /// <summary>The same downhill; negative.</summary>
    public double SteepestDown { get; }

    /// <summary>Share of the points that have a height.</summary>
    public double HeightsKnown { get; }

    /// <summary>m above the sea; NaN without heights.</summary>
    public double StartAltitude { get; }

    /// <summary>m above the sea; NaN without heights.</summary>
    public double EndAltitude { get; }

    /// <summary>Between two neighbouring points, m.</summary>
    public double LongestGap { get; }

    /// <summary>How far from the start that gap begins, m.</summary>
    public double LongestGapAt { get; }

    /// <summary>Whether it has length at all.</summary>
    public bool IsUsable => Length > 0 && double.IsFinite(Length);

    /// <summary>The first point, ° north and ° east.</summary>
    public (double Latitude, double Longitude) First => (Points.Latitudes[0], Points.Longitudes[0]);

    /// <summary>The last point.</summary>
    public (double Latitude, double Longitude) Last => (Points.Latitudes[^1], Points.Longitudes[^1]);

    /// <summary>Measured when it is first asked for, and kept as long as the track is.</summary>
    public static TrackProfile Of(GpxTrack track) => Known.GetValue(track, points => new TrackProfile(points));
}
