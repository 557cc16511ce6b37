using System.Collections.Immutable;

namespace RigLang.Model.Tracks;

/// <summary>A recorded or planned way as points in order.</summary>
/// <param name="Latitudes">Degrees north.</param>
/// <param name="Longitudes">Degrees east.</param>
/// <param name="Elevations">Metres above the sea; NaN where the file gives none.</param>
public sealed record Track(ImmutableArray<double> Latitudes, ImmutableArray<double> Longitudes, ImmutableArray<double> Elevations)
{
    public int Count => Latitudes.Length;

    /// <summary>Whether every point has an elevation.</summary>
    public bool HasElevations => Count > 0 && !Elevations.Any(double.IsNaN);
}

/// <summary>A track, or half a sentence that says why there is none.</summary>
public sealed record TrackReading(Track? Track, string? Problem)
{
    public static TrackReading None(string problem) => new(null, problem);
}
