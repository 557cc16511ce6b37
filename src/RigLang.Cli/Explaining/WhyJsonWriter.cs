using System.Collections.Immutable;
using RigLang.Analysis.Doubts;
using RigLang.Analysis.Ranking;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Reasons;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Cli.Explaining;

/// <summary>Makes of a result what <c>explain --json</c> writes of it.</summary>
internal sealed class WhyJsonWriter(Workspace workspace, Func<FileId, string> shown)
{
    public WhyJson Of(IResult result, Node<double> node, UnitChoice units, CancellationToken cancel)
    {
        var doubt = DoubtTable.Of(result, node.Subject);
        return new WhyJson(
            result.Name,
            node.Subject.Title,
            result.Title,
            node.IsComputed ? Finite(node.Value) : null,
            result.Kind.Dimension.ToString(),
            node.IsComputed ? units.Write(result, node.Subject, node.Value) : null,
            node.IsEstimated,
            node.Missing is { } missing ? new NeedOfJson(missing.Fact.FullName, missing.Words) : null,
            Steps(ReasonTree.Of(workspace, node, units)),
            doubt is { HalfWidth: > 0 } ? Finite(doubt.HalfWidth) : null,
            doubt is null ? [] : [.. doubt.Parts.Select(part => new CauseJson(
                part.Fact.Fact.Fact.FullName, Plain(part.Fact.Fact.Words), part.Fact.Origin == ReadOrigin.Estimate, part.Fact.HalfWidth, part.Effect))],
            [.. WhatMatters.Of(result, node.Subject, units.System, cancel).Select(move => new MoveJson(
                move.Fact.Fact.Fact.FullName, MoveWords.Step(move, units), move.Step, move.Fact.Kind.Dimension.ToString(), move.Difference))]);
    }

    private ImmutableArray<StepJson> Steps(Reason whole)
    {
        var all = whole.All().ToList();
        var index = new Dictionary<Reason, int>(ReferenceEqualityComparer.Instance as IEqualityComparer<Reason>);
        for (var i = 0; i < all.Count; i++)
        {
            index[all[i]] = i;
        }

        return [.. all.Select(reason => Of(reason, index))];
    }

    private StepJson Of(Reason reason, Dictionary<Reason, int> index)
    {
        var isResult = reason.Sort == ReasonSort.Result;
        return new StepJson(
            Words(reason.Sort),
            Plain(reason.Title),
            reason.Name,
            Said(reason.Value),
            Finite(reason.Number),
            reason.Place is { } place ? shown(place.File) : null,
            reason.Place?.Range.Start.Line + 1,
            isResult ? Said(reason.Note) : null,
            Said(reason.Source),
            isResult ? null : Said(reason.Note),
            [.. reason.Because.Select(because => index[because])]);
    }

    private static string Words(ReasonSort sort) => sort switch
    {
        ReasonSort.Result => "result",
        ReasonSort.Step => "step",
        ReasonSort.Written => "written",
        ReasonSort.Solved => "solved",
        ReasonSort.Default => "default",
        ReasonSort.Assumed => "assumed",
        ReasonSort.Estimated => "estimated",
        _ => "missing",
    };

    private static string? Said(string words) => words.Length == 0 ? null : words;

    private static string Plain(string words) => words.Replace("`", "", StringComparison.Ordinal);

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
