using RigLang.Syntax;
using RigLang.Analysis.Results.Ratings;
using RigLang.Comparing;
using RigLang.Editing.Reasons;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Comparing;

/// <summary>The first line of a comparison.</summary>
public static class VerdictWords
{
    public static string Of(Comparison comparison) => comparison.Verdict switch
    {
        Verdict.Same => "Nothing differs.",
        Verdict.OnlyWriting when comparison.Results.IsEmpty => "Only the writing differs; every value is the same.",
        Verdict.OnlyWriting => "Only the writing differs; results move by the rounding of the other unit alone.",
        Verdict.InputsChanged => $"{Phrase.Many(comparison.Changes.Count(change => change.IsInput), "input")} changed, and no result moved.",
        Verdict.ResultsMoved => $"{Phrase.Many(comparison.Results.Length, "result")} moved; no limit is crossed{Mended(comparison)}.",
        Verdict.NewErrors => $"{Phrase.Many(comparison.Findings.New.Count(finding => finding.Severity == Severity.Error), "new error")}.",
        _ => $"A limit is crossed: {string.Join("; ", comparison.Limits.Where(limit => limit.IsCrossed).Select(Crossed))}.",
    };

    /// <summary>The same of two declarations of one state.</summary>
    public static string Beside(Comparison comparison) => comparison.Verdict switch
    {
        Verdict.Same or Verdict.OnlyWriting => "Nothing differs but the writing.",
        Verdict.InputsChanged => $"{Phrase.Many(comparison.Changes.Count(change => change.IsInput), "input")} differ, and no result.",
        Verdict.ResultsMoved => $"{Phrase.Many(comparison.Results.Length, "result")} differ; no limit is crossed{Mended(comparison)}.",
        _ => Of(comparison),
    };

    private static string Mended(Comparison comparison) =>
        comparison.Limits.Count(limit => limit.IsMended) is var count and > 0 ? $", and {(count == 1 ? "one holds" : $"{count} hold")} again" : "";

    private static string Crossed(LimitChange limit) => $"{limit.Pair.Title}, {limit.Title}, {RoomWords.Of(limit.After, SubjectUnits.Of(limit.After!.Rating.Subject))}";
}

/// <summary>The room to a limit in words.</summary>
public static class RoomWords
{
    public static string Of(RatingLine? line, UnitChoice units) =>
        line is null ? "–"
        : !line.IsKnown ? "unknown"
        : line.IsOver ? $"{Written(-line.Room, line, units)} over"
        : $"{Written(line.Room, line, units)} left";

    private static string Written(double room, RatingLine line, UnitChoice units) => units.Write(Math.Max(0, room), line.Rating.Load.Kind);
}
