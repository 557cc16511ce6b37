using RigLang.Syntax;
using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Braking;
using RigLang.Analysis.Results.Power;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Editing.Hovering;

/// <summary>A rig: the verdict first, then the room to each rating, loads and ratios, what was estimated, and the caution.</summary>
internal static class RigCard
{
    public const string Caution =
        "Ratings are ceilings, not aims. Weigh the real rig; the makers' and the local law's word comes first; structural work on a hitch belongs to those licensed for it.";

    private const int MostRatings = 8;

    private const int MostListed = 3;

    private static readonly ImmutableArray<IResult> Ratios =
    [
        RatioResults.TongueRatio, RatioResults.OverhangRatio, RatioResults.TrailerShare, RatioResults.FrontAxleChange, HitchResults.RestoredShare, RatingResults.PayloadLeft,
        StabilityResults.Damping, BrakingResults.StopDistance, RoadResults.LevelRange, PowerResults.GradeSpeed, PowerResults.LaunchGrade,
    ];

    private static readonly ImmutableArray<IResult> Loads =
        [LoadResults.FrontAxleLoad, LoadResults.RearAxleLoad, LoadResults.TrailerAxleLoad, LoadResults.TongueLoad, LoadResults.TrailerLoad, LoadResults.TrainLoad];

    public static CardText Of(View view, RigStudy rig)
    {
        var units = SubjectUnits.Of(rig, view.State.Units);
        var ratings = RatingTable.Of(rig);
        var card = new CardText().Heading($"rig {rig.Parts.Rig.Name}", rig.Parts.Rig.Title).Paragraph(Verdict(ratings));
        var known = ratings.Where(line => line.IsKnown).ToList();
        var shown = known.Count > MostRatings + 1 ? Math.Max(MostRatings, known.Count(line => line.IsOver)) : known.Count;
        card.Table(known.Take(shown).Select(Row)).Paragraph(shown < known.Count ? $"{known.Count - shown} more have more room." : "");
        card.Table(ResultLines.Rows(Loads.Where(result => !ratings.Any(line => line.IsKnown && line.Rating.Load == result)), rig, units));
        var ratios = Ratios.Select(result => (Result: result, Node: result.Compute(rig)!)).Where(pair => pair.Node.IsComputed).ToList();
        card.Table(ratios.Select(pair => new[] { pair.Result.Title, Shown.Marked(pair.Result, pair.Node, units) }));
        card.Table(RunCard.OfSet(view, rig.Parts.Rig));
        var nodes = ratings.Select(line => (Node)line.Load).Concat(ratios.Select(pair => pair.Node));
        return card.Paragraph(ResultLines.EstimatesInBrief(nodes)).Paragraph(Caution);
    }

    /// <summary>In a sentence: over, within, or not known yet and for want of what.</summary>
    public static string Verdict(ImmutableArray<RatingLine> ratings)
    {
        var known = ratings.Where(line => line.IsKnown).ToList();
        var over = known.Where(line => line.IsOver).ToList();
        var unknown = ratings.Where(line => !line.IsKnown).ToList();
        if (known.Count == 0)
        {
            return unknown.Count == 0 ? "**No rating applies.**" : $"**No verdict yet:** {Lack(unknown[0])}";
        }

        var first = over.Count > 0
            ? $"**Over {Count(over.Count)}:** {Listed(over, line => $"{Phrase.Small(line.Rating.Title)} by {Room(line)}")}."
            : $"**Within {(unknown.Count == 0 ? "all " : "the ")}{Count(known.Count)}{(unknown.Count == 0 ? "" : " that can be checked")}.** Closest: {Phrase.Small(known[0].Rating.Title)}, {Room(known[0])} left.";
        return unknown.Count == 0 ? first : $"{first} Not checked: {Listed(unknown, line => $"{Phrase.Small(line.Rating.Title)}, {Lack(line)}")}.";
    }

    /// <summary>Load, limit as its author wrote it, room.</summary>
    public static string[] Row(RatingLine line) =>
    [
        line.Rating.Title,
        QuantityWriter.WriteAgainst(line.Load.Value, line.Limit!),
        $"of {line.Limit!.Text}",
        Room(line),
        (line.IsOver ? "over" : "left") + (line.IsEstimated ? $" ({Shown.Estimated})" : ""),
    ];

    private static string Room(RatingLine line) => QuantityWriter.WriteLike(Math.Abs(line.Room), line.Limit!);

    private static string Lack(RatingLine line) =>
        !line.Load.IsComputed ? Shown.NotComputed(line.Load)
        : line.LimitNode is { IsComputed: false } limit ? Shown.NotComputed(limit)
        : $"needs `{line.Rating.Limit.Keyword}`{(BlockWords.Of(line.Rating.Owner) is { Length: > 0 } owner ? " of " + owner : "")}";

    /// <summary>The first few; titles have commas of their own.</summary>
    private static string Listed(List<RatingLine> lines, Func<RatingLine, string> words) =>
        string.Join("; ", lines.Take(MostListed).Select(words)) + (lines.Count > MostListed ? $"; and {lines.Count - MostListed} more" : "");

    private static string Count(int count) => count == 1 ? "1 rating" : $"{count} ratings";
}
