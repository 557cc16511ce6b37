using System.Collections.Immutable;
using RigLang.Analysis.Results.Road;
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

/// <summary>How a way is told. Of several the first counts, and a check says so.</summary>
internal enum WayForm
{
    Sections,
    Track,
    Totals,
}

/// <summary>
/// A way as the leg of a trip or a logged run tells it: by sections, by a track, or by distance with climb and descent.
/// </summary>
/// <param name="Track">What the block's <c>gpx</c> line names; null where it names none, or it can't be read.</param>
internal sealed record Way(Block Block, JourneyFacts Facts, Model.Tracks.Track? Track)
{
    public WayForm Form =>
        !Block.All(Facts.Section).IsEmpty ? WayForm.Sections
        : Block.Find(Facts.Gpx) is not null ? WayForm.Track
        : WayForm.Totals;

    /// <summary>The track, measured; null where it isn't the track that counts, or it has no length.</summary>
    public TrackProfile? Profile => Form == WayForm.Track && Track is { } track && TrackProfile.Of(track) is { IsUsable: true } profile ? profile : null;

    /// <summary>Whether the pieces come in the order in which they are driven; of sums alone nobody knows where the hills are.</summary>
    public bool IsOrdered => Form == WayForm.Sections || HasTrackHeights;

    /// <summary>The track's own altitude where it begins, if it has any.</summary>
    public double? StartOfTrack => HasTrackHeights ? Profile!.StartAltitude : null;

    private bool HasTrackHeights => Profile is { } profile && !double.IsNaN(profile.Climb);

    /// <summary>Along the road, m.</summary>
    public double Distance(Reader read) => Form switch
    {
        WayForm.Sections => Sections(read).Sum(section => section.Length),
        WayForm.Track => Measured(read)?.Length ?? double.NaN,
        _ => read.Quantity(Block, Facts.Distance),
    };

    /// <summary>Sum of all climbs, m.</summary>
    public double Climb(Reader read) => Form switch
    {
        WayForm.Sections => Sections(read).Sum(section => Math.Max(0, section.Rise)),
        WayForm.Track when HasTrackHeights => Measured(read)!.Climb,
        _ => read.Quantity(Block, Facts.Climb),
    };

    /// <summary>Sum of all descents, m. A road that doesn't climb and says nothing of descending is level.</summary>
    public double Descent(Reader read) => Form switch
    {
        WayForm.Sections => Sections(read).Sum(section => Math.Max(0, -section.Rise)),
        WayForm.Track when HasTrackHeights => Measured(read)!.Descent,
        _ => read.QuantityIfKnown(Block, Facts.Descent) ?? (read.Quantity(Block, Facts.Climb) == 0 ? 0 : read.Quantity(Block, Facts.Descent)),
    };

    /// <summary>How much higher it ends than it begins, m.</summary>
    public double NetRise(Reader read) => HasTrackHeights ? Profile!.EndAltitude - Profile.StartAltitude : Climb(read) - Descent(read);

    /// <summary>
    /// Stretches with their heights; needs climb and descent where neither sections nor a track's heights give them. Where only sums are known the stretches are a
    /// climb, a level and a descent, and the hills are taken as 4 % steep.
    /// </summary>
    /// <param name="read">Notes the reads.</param>
    /// <param name="start">Altitude where it begins, m.</param>
    public IReadOnlyList<WayPiece> Pieces(Reader read, double start)
    {
        if (HasTrackHeights)
        {
            var track = Measured(read)!;
            return [.. track.Stretches.Select(stretch => new WayPiece(stretch.Length, stretch.Grade, start + stretch.Altitude - track.StartAltitude, stretch.Course, null))];
        }

        var course = read.QuantityIfKnown(Block, Facts.Heading) ?? double.NaN;
        if (Form == WayForm.Sections)
        {
            return OfSections(Sections(read), start, course);
        }

        var (distance, climb, descent) = (Distance(read), Climb(read), Descent(read));
        // The hills lie anywhere along the way: half the net rise is the height of the mean.
        var middle = start + ((climb - descent) / 2);
        List<WayPiece> pieces =
        [
            .. RouteSplit.FromTotals(distance, climb, descent, 1, 1).Where(piece => piece.Length != 0)
                .Select(piece => new WayPiece(piece.Length, piece.Grade, middle, course, null)),
        ];
        return Profile is { } flat ? AlongCourses(pieces, flat) : pieces;
    }

    /// <summary>The sections' lengths (m), grades, rises (m) and speeds (m/s). Those of no length are left out, and speeds of none; a check says so.</summary>
    internal ImmutableArray<(double Length, double Grade, double Rise, double? Speed)> Sections(Reader read) =>
    [
        .. read.Lines(Block, Facts.Section)
            .Select(line => (Length: line.MeasureOf("length")!.Value, Grade: line.MeasureOf("grade")!.Value, Speed: line.MeasureOf("speed") is { Value: > 0 and var speed } ? speed : (double?)null))
            .Where(section => section.Length > 0).Select(section => (section.Length, section.Grade, section.Length * Slope.Sine(section.Grade), section.Speed)),
    ];

    private static List<WayPiece> OfSections(ImmutableArray<(double Length, double Grade, double Rise, double? Speed)> sections, double start, double course)
    {
        var pieces = new List<WayPiece>(sections.Length);
        var altitude = start;
        foreach (var section in sections)
        {
            pieces.Add(new WayPiece(section.Length, section.Grade, altitude + (section.Rise / 2), course, section.Speed));
            altitude += section.Rise;
        }

        return pieces;
    }

    /// <summary>A track without heights still knows its courses: each stretch gets its share of climb, level and descent.</summary>
    private static List<WayPiece> AlongCourses(List<WayPiece> pieces, TrackProfile track) =>
        [.. track.Stretches.SelectMany(stretch => pieces.Select(piece => piece with { Length = piece.Length * stretch.Length / track.Length, Course = stretch.Course }))];

    private TrackProfile? Measured(Reader read)
    {
        read.LineIfWritten(Block, Facts.Gpx);
        if (Profile is null)
        {
            read.Need(Block, Facts.Gpx);
        }

        return Profile;
    }
}
