using System.Collections.Immutable;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Checking;
using RigLang.Cli.Json;
using RigLang.Comparing;
using RigLang.Editing.Comparing;
using RigLang.Model.Binding;

namespace RigLang.Cli.Comparing;

/// <summary>What <c>compare --json</c> and <c>beside --json</c> write.</summary>
/// <param name="Format"><c>riglang-compare</c>, or <c>riglang-beside</c> for two declarations of one state.</param>
/// <param name="Version">Of the format; 1.</param>
/// <param name="Verdict">same, only-writing, inputs-changed, results-moved, new-errors or limit-crossed.</param>
/// <param name="Unmoved">How many results are what they were.</param>
/// <param name="StillFound">How many findings are in both.</param>
/// <param name="Unread">Files with lines that can't be understood in one of the states.</param>
internal sealed record CompareDocument(
    string Format, int Version, string Riglang, string Before, string After, string Verdict, string Words, ImmutableArray<ChangeJson> Changes, ImmutableArray<MovedJson> Results,
    ImmutableArray<RoomJson> Limits, int Unmoved, ImmutableArray<FoundJson> New, ImmutableArray<FoundJson> Gone, int StillFound, ImmutableArray<string> Unread);

/// <summary>An input that differs.</summary>
/// <param name="Sort">added, removed, changed, rewritten or renamed.</param>
internal sealed record ChangeJson(string Sort, string Of, string? What, string? Before, string? After, PlaceJson? PlaceBefore, PlaceJson? PlaceAfter);

/// <summary>A result that moved. Values in <c>unit</c>, SI; absent where it isn't computed.</summary>
/// <param name="Of">The declaration.</param>
/// <param name="Part">Its axle, leg or stop.</param>
/// <param name="Because">What each change alone would have done.</param>
/// <param name="Together">What the changes do beyond that.</param>
internal sealed record MovedJson(
    string Of, string? Part, string Name, string Title, string Unit, double? Before, double? After, double? Difference, ImmutableArray<ShareJson> Because, double? Together);

/// <summary>The part of one change; <c>change</c> counts in <c>changes</c> from 0. No difference: alone it leaves no number.</summary>
internal sealed record ShareJson(int Change, double? Difference);

/// <summary>Room to a limit, SI; negative when over.</summary>
/// <param name="State">crossed, holds-again or moved.</param>
internal sealed record RoomJson(string Of, string Title, string Unit, double? Before, double? After, string State);

/// <summary>A finding of one state.</summary>
internal sealed record FoundJson(string Code, string Slug, string Severity, string Message, PlaceJson Place);

/// <summary>Makes the document.</summary>
internal static class ComparisonJson
{
    /// <summary>Of two states.</summary>
    public static CompareDocument Of(Comparison comparison, string words, string before, string after) => Of("riglang-compare", comparison, words, before, after);

    /// <summary>Of two declarations of one state.</summary>
    public static CompareDocument Beside(Comparison comparison, string words, string first, string second) => Of("riglang-beside", comparison, words, first, second);

    private static CompareDocument Of(string format, Comparison comparison, string words, string before, string after) => new(
        format, 1, RigLangProgram.Version, before, after, VerdictName(comparison.Verdict), words,
        [.. comparison.Changes.Select(change => Of(comparison, change))],
        [.. comparison.Results.Select(result => Of(comparison, result))],
        [.. comparison.Limits.Select(Of)],
        comparison.Unmoved,
        [.. comparison.Findings.New.Select(finding => Of(comparison.After, finding))],
        [.. comparison.Findings.Cleared.Select(finding => Of(comparison.Before, finding))],
        comparison.Findings.Still,
        [.. comparison.Unread.Select(file => file.Name)]);

    private static ChangeJson Of(Comparison comparison, Change change) => new(
        InputRow.Of(change).Sort, change.Of, change.What.Length == 0 ? null : change.What, change.Before, change.After,
        PlaceOf(comparison.Before, change.PlaceBefore), PlaceOf(comparison.After, change.PlaceAfter));

    private static MovedJson Of(Comparison comparison, ResultChange change) => new(
        change.Pair.Title, change.Part.Length == 0 ? null : change.Part, change.Result.Name, change.Result.Title, change.Result.Kind.Dimension.ToString(),
        Value(change.Before), Value(change.After), Finite(change.Difference),
        [.. change.Because.Select(share => new ShareJson(comparison.Changes.IndexOf(share.Change), Finite(share.Difference)))], Finite(change.Together));

    private static RoomJson Of(LimitChange limit) => new(
        limit.Pair.Title, limit.Title, (limit.After ?? limit.Before)!.Rating.Load.Kind.Dimension.ToString(), Room(limit.Before), Room(limit.After),
        limit.IsCrossed ? "crossed" : limit.IsMended ? "holds-again" : "moved");

    private static FoundJson Of(ComparedState state, Finding finding) => new(
        finding.Check.Code, finding.Check.Slug, FindingPrinter.Words(finding.Severity), finding.Message, PlaceJson.Of(state.Workspace, state.NameOf, finding.Place));

    private static PlaceJson? PlaceOf(ComparedState state, Place? place) => place is { } there ? PlaceJson.Of(state.Workspace, state.NameOf, there) : null;

    private static double? Room(RatingLine? line) => line is null ? null : Finite(line.Room);

    private static double? Value(Node<double>? node) => node is { IsComputed: true } ? Finite(node.Value) : null;

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static string VerdictName(Verdict verdict) => verdict switch
    {
        Verdict.Same => "same",
        Verdict.OnlyWriting => "only-writing",
        Verdict.InputsChanged => "inputs-changed",
        Verdict.ResultsMoved => "results-moved",
        Verdict.NewErrors => "new-errors",
        _ => "limit-crossed",
    };
}
