using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Comparing;

/// <summary>Two states against each other: what went in, what came of it, what the checks say.</summary>
public sealed record Comparison(
    ComparedState Before, ComparedState After, ImmutableArray<DeclarationPair> Declarations, ImmutableArray<Change> Changes, ImmutableArray<ResultChange> Results, int Unmoved,
    ImmutableArray<LimitChange> Limits, FindingChanges Findings, ImmutableArray<UnreadFile> Unread)
{
    /// <summary>Whether the shares of the changes were computed: beyond <see cref="Attribution.MostChanges"/> they aren't.</summary>
    public bool IsTakenApart => Changes.Count(change => change is { IsInput: true, Steps.IsEmpty: false }) <= Attribution.MostChanges;

    public Verdict Verdict =>
        Limits.Any(limit => limit.IsCrossed) ? Verdict.LimitCrossed
        : Findings.New.Any(finding => finding.Severity == Severity.Error) ? Verdict.NewErrors
        : Changes.Any(change => change.IsInput) ? Results.IsEmpty && Limits.IsEmpty ? Verdict.InputsChanged : Verdict.ResultsMoved
        : Changes.IsEmpty && IsSameText ? Verdict.Same
        : Verdict.OnlyWriting;

    /// <summary>Line breaks and files that were only moved don't count.</summary>
    private bool IsSameText { get; init; }

    public static Comparison Of(ComparedState before, ComparedState after, CancellationToken cancel = default)
    {
        var pairs = DeclarationMatching.Match(before, after);
        var changes = InputComparison.Compare(before, after, pairs);
        cancel.ThrowIfCancellationRequested();
        var (moved, unmoved) = ResultComparison.Results(before, after, pairs);
        cancel.ThrowIfCancellationRequested();
        return new Comparison(
            before, after, pairs, changes, Attribution.Explain(before, changes, moved, cancel), unmoved, ResultComparison.Limits(before, after, pairs),
            FindingComparison.Compare(before, after, pairs, cancel), UnreadFiles.Of(before, after))
        {
            IsSameText = TextsOf(before).SequenceEqual(TextsOf(after)),
        };
    }

    /// <summary>
    /// Two declarations of one kind in one state: what would be if the second took the place of the first. Their lines are compared with what they inherit, and the
    /// shares of the changes are those that each would have in the first.
    /// </summary>
    /// <param name="takeApart">Whether to work these shares out.</param>
    public static Comparison Beside(WorkspaceAnalysis analysis, Declaration first, Declaration second, bool takeApart = true, CancellationToken cancel = default)
    {
        var state = new ComparedState(analysis);
        ImmutableArray<DeclarationPair> pairs = [new DeclarationPair(first, second)];
        var changes = InSight(FactComparison.CompareWhole(pairs[0]), first, second);
        var (moved, unmoved) = ResultComparison.Results(state, state, pairs);
        cancel.ThrowIfCancellationRequested();
        return new Comparison(
            state, state, pairs, changes, takeApart ? Attribution.Explain(state, changes, moved, cancel) : moved, unmoved, ResultComparison.Limits(state, state, pairs), new FindingChanges([], [], 0), [])
        {
            IsSameText = true,
        };
    }

    /// <summary>A change may name what only the second's file has in sight, so that file is used with it.</summary>
    private static ImmutableArray<Change> InSight(ImmutableArray<Change> changes, Declaration first, Declaration second)
    {
        var (from, to) = (first.Own.File, second.Own.File);
        return from == to
            ? changes
            : [.. changes.Select(change => change with { Steps = change.Steps.IsEmpty ? [] : [.. change.Steps, new AppendStep(from, $"use \"{FilePaths.PathFrom(from, to)}\"\n")] })];
    }

    private static IEnumerable<string> TextsOf(ComparedState state) =>
        state.Files.OrderBy(state.NameOf, StringComparer.Ordinal).SelectMany(file => state.Workspace.Find(file)!.Syntax.Lines.Select(line => line.Text));
}

/// <summary>The comparison in a word, from harmless to not.</summary>
public enum Verdict
{
    /// <summary>The same to the letter.</summary>
    Same,

    /// <summary>Blanks, comments, names, units: no value differs by more than the rounding of the other unit.</summary>
    OnlyWriting,

    /// <summary>Values differ, and no result with them.</summary>
    InputsChanged,

    ResultsMoved,

    /// <summary>A check calls something an error that it didn't before.</summary>
    NewErrors,

    /// <summary>A rating is passed that held before.</summary>
    LimitCrossed,
}
