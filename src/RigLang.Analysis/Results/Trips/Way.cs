using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>A stretch of the way before anything drives it.</summary>
/// <param name="Length">m.</param>
/// <param name="Grade">Rise over run.</param>
/// <param name="Altitude">In its middle, m.</param>
/// <param name="Course">rad from north; NaN where nobody says.</param>
/// <param name="Wish">Wished speed of its own, m/s; null where the leg's counts.</param>
internal readonly record struct WayPiece(double Length, double Grade, double Altitude, double Course, double? Wish);

/// <summary>
/// A way as the leg of a trip or a logged run tells it: by a track, by sections, or by distance with climb and descent. What several would say is asked in
/// that order.
/// </summary>
internal sealed record Way(Block Block, JourneyFacts Facts, Model.Tracks.Track? Track)
{
    /// <summary>Along the road, m.</summary>
    public double Distance(Reader read)
    {
        if (Track is not null)
        {
            return OfTrack(read).Sum(stretch => stretch.Length);
        }

        var sections = read.Lines(Block, Facts.Section);
        return sections.Count > 0 ? sections.Sum(section => section.MeasureOf("length")!.Value) : read.Quantity(Block, Facts.Distance);
    }

    /// <summary>Stretches with their heights; needs climb and descent where neither track nor sections give them.</summary>
    /// <param name="read">Notes the reads.</param>
    /// <param name="start">Altitude where it begins, m; a track brings its own.</param>
    public IReadOnlyList<WayPiece> Pieces(Reader read, double start)
    {
        if (Track is not null)
        {
            return [.. OfTrack(read).Select(stretch => new WayPiece(stretch.Length, stretch.Grade, stretch.Altitude, stretch.Course, null))];
        }

        var course = read.QuantityIfKnown(Block, Facts.Heading) ?? double.NaN;
        var sections = read.Lines(Block, Facts.Section);
        if (sections.Count > 0)
        {
            return OfSections(sections, start, course);
        }

        var split = RouteSplit.FromTotals(read.Quantity(Block, Facts.Distance), read.Quantity(Block, Facts.Climb), read.Quantity(Block, Facts.Descent), 1, 1);
        // The hills lie anywhere along the way: half the net rise is the height of the mean.
        var middle = start + (split.Sum(piece => piece.Rise) / 2);
        return [.. split.Where(piece => piece.Length > 0 || double.IsNaN(piece.Length)).Select(piece => new WayPiece(piece.Length, piece.Grade, middle, course, null))];
    }

    /// <summary>The track's own altitude where it begins, if it has any.</summary>
    public double? StartOfTrack => Track is { HasElevations: true } ? Track.Elevations[0] : null;

    private static List<WayPiece> OfSections(IReadOnlyList<Fact> sections, double start, double course)
    {
        var pieces = new List<WayPiece>();
        var altitude = start;
        foreach (var section in sections)
        {
            var length = section.MeasureOf("length")!.Value;
            var grade = section.MeasureOf("grade")!.Value;
            var rise = length * Slope.Sine(grade);
            pieces.Add(new WayPiece(length, grade, altitude + (rise / 2), course, section.MeasureOf("speed")?.Value));
            altitude += rise;
        }

        return pieces;
    }

    private IReadOnlyList<TrackStretch> OfTrack(Reader read)
    {
        read.LineIfWritten(Block, Facts.Gpx);
        if (!Track!.HasElevations)
        {
            read.StandIn(Block, Facts.Climb);
        }

        return Stretches(Track);
    }

    /// <summary>A track without heights counts as level.</summary>
    private static IReadOnlyList<TrackStretch> Stretches(Model.Tracks.Track track) => Cache.GetValue(track, static track =>
        Mechanics.Track.Stretches(track.Latitudes.AsSpan(), track.Longitudes.AsSpan(), track.HasElevations ? track.Elevations.AsSpan() : new double[track.Count]));

    // A track is the same object while its file is unchanged: twenty thousand points are smoothed once, not at every keystroke.
    private static readonly System.Runtime.CompilerServices.ConditionalWeakTable<Model.Tracks.Track, IReadOnlyList<TrackStretch>> Cache = [];
}
