using System.Collections.Immutable;
using System.Xml;

namespace RigLang.Model.Tracks;

/// <summary>
/// The short way through a sound GPX 1.1 file: points and heights are read in one pass, everything else is stepped over, and no tree is built. Whatever isn't as it
/// should be is left to the whole reader, whose word holds.
/// </summary>
internal static class PlainGpx
{
    private const string Space = "http://www.topografix.com/GPX/1/1";

    /// <summary>Null for anything but a sound file with two points or more.</summary>
    /// <param name="reader">At the file's beginning; read to its end, for what follows may be broken.</param>
    public static Track? TryRead(XmlReader reader)
    {
        if (reader.MoveToContent() != XmlNodeType.Element || reader.LocalName != "gpx" || reader.NamespaceURI != Space || reader.GetAttribute("version") != "1.1")
        {
            return null;
        }

        Points track = new(), route = new();
        var isOpen = reader.Read();
        while (isOpen)
        {
            if (reader.NodeType != XmlNodeType.Element || reader.NamespaceURI != Space)
            {
                isOpen = reader.NodeType == XmlNodeType.Element ? Skipped(reader) : reader.Read();
                continue;
            }

            switch (reader.LocalName)
            {
                case "trk" or "trkseg" or "rte":
                    isOpen = reader.Read();
                    break;
                case "trkpt" or "rtept":
                    if (!(reader.LocalName == "trkpt" ? track : route).Add(reader))
                    {
                        return null;
                    }

                    break;
                default:
                    isOpen = Skipped(reader);
                    break;
            }
        }

        return (track.Count > 0 ? track : route) is { Count: >= 2 } points ? points.ToTrack() : null;
    }

    private static bool Skipped(XmlReader reader)
    {
        reader.Skip();
        return !reader.EOF;
    }

    private sealed class Points
    {
        private readonly ImmutableArray<double>.Builder latitudes = ImmutableArray.CreateBuilder<double>(), longitudes = ImmutableArray.CreateBuilder<double>(), heights = ImmutableArray.CreateBuilder<double>();

        public int Count => heights.Count;

        /// <summary>Reads the point that the reader is at, and steps behind it; false for one that is nowhere on the earth.</summary>
        public bool Add(XmlReader reader)
        {
            if (!(Number(reader.GetAttribute("lat")) is >= -90 and <= 90 and var latitude) || !(Number(reader.GetAttribute("lon")) is >= -180 and < 180 and var longitude))
            {
                return false;
            }

            latitudes.Add(latitude);
            longitudes.Add(longitude);
            heights.Add(double.NaN);
            if (reader.IsEmptyElement)
            {
                reader.Read();
                return true;
            }

            var depth = reader.Depth;
            reader.Read();
            while (reader.Depth > depth)
            {
                if (reader.NodeType != XmlNodeType.Element)
                {
                    reader.Read();
                }
                else if (reader.LocalName == "ele" && reader.NamespaceURI == Space)
                {
                    heights[^1] = Number(reader.ReadElementContentAsString());
                    if (!double.IsFinite(heights[^1]))
                    {
                        return false;
                    }
                }
                else
                {
                    reader.Skip();
                }
            }

            reader.Read();
            return true;
        }

        public Track ToTrack() => new(latitudes.DrainToImmutable(), longitudes.DrainToImmutable(), heights.DrainToImmutable());

        /// <summary>NaN for what is no number.</summary>
        private static double Number(string? text)
        {
            try
            {
                return text is null ? double.NaN : XmlConvert.ToDouble(text);
            }
            catch (FormatException)
            {
                return double.NaN;
            }
        }
    }
}
