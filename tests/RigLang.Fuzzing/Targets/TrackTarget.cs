using RigLang.Model.Tracks;

namespace RigLang.Fuzzing.Targets;

/// <summary>The reader of GPX tracks: a track of numbers, or the problem in words; never both.</summary>
internal sealed class TrackTarget : IFuzzTarget
{
    public string Name => "track";

    public void Run(ReadOnlySpan<byte> input)
    {
        var reading = GpxReader.Read(Promise.Text(input));
        Promise.Holds(reading.Track is null != (reading.Problem is null), "a track or a problem");
        if (reading.Track is { } track)
        {
            Promise.Holds(track.Latitudes.All(latitude => Math.Abs(latitude) <= 90) && track.Longitudes.All(longitude => Math.Abs(longitude) <= 180), "places on the globe");
            Promise.Holds(track.Longitudes.Length == track.Count && (track.Elevations.IsEmpty || track.Elevations.Length == track.Count), "one of each at every point");
        }
    }
}
