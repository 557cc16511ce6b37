using System.Xml;
using NetTopologySuite.IO;

namespace RigLang.Model.Tracks;

/// <summary>Reads GPX 1.1, sound files in one pass and all others with NetTopologySuite: all segments of all tracks one behind the other; routes where there is no track.</summary>
public static class GpxReader
{
    /// <summary>Never throws; a file that is no GPX, or holds nothing to drive along, says so.</summary>
    public static TrackReading Read(string text)
    {
        try
        {
            using (var plain = Open(text))
            {
                if (PlainGpx.TryRead(plain) is { } track)
                {
                    return new TrackReading(track, null);
                }
            }

            using var reader = Open(text);
            var file = GpxFile.ReadFrom(reader, new GpxReaderSettings { DefaultCreatorIfMissing = "unknown", IgnoreUnexpectedChildrenOfTopLevelElement = true });
            var points = file.Tracks.SelectMany(track => track.Segments).SelectMany(segment => segment.Waypoints).ToList();
            if (points.Count == 0)
            {
                points = [.. file.Routes.SelectMany(route => route.Waypoints)];
            }

            return points.Count < 2
                ? TrackReading.None("it holds no track or route of two points or more")
                : new TrackReading(
                    new Track(
                        [.. points.Select(point => (double)point.Latitude)],
                        [.. points.Select(point => (double)point.Longitude)],
                        [.. points.Select(point => point.ElevationInMeters ?? double.NaN)]),
                    null);
        }
        catch (XmlException problem)
        {
            return TrackReading.None($"it is no GPX 1.1 file ({problem.Message.TrimEnd('.')})");
        }
    }

    /// <summary>No outside entities: a track is data and may come from anywhere.</summary>
    private static XmlReader Open(string text) => XmlReader.Create(new StringReader(text), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
}
