using RigLang.Editing.Reasons;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Showing;

/// <summary>Makes rows of results. One whose question doesn't arise for the subject has no row.</summary>
internal static class ResultRows
{
    public static Section Of(string title, IEnumerable<IResult> results, ISubject subject, UnitChoice units) =>
        new(title, [.. results.Select(result => Of(result, subject, units)).OfType<Row>()]);

    public static Row? Of(IResult result, ISubject subject, UnitChoice units) =>
        result.Compute(subject) is { Applies: true } node ? Of(result.Title, result, node, units) : null;

    public static Row Of(string title, IResult result, Node<double> node, UnitChoice units) => node.IsComputed
        ? new Row(title, units.Write(result, node.Subject, node.Value), Remark(Shown.Doubt(result, node, units).Trim(), node.IsEstimated ? Shown.Estimated : ""))
        : new Row(title, "", Shown.NotComputed(node));

    private static string Remark(string doubt, string mark) => doubt.Length > 0 && mark.Length > 0 ? $"{Cells.Tied(doubt)}, {mark}" : Cells.Tied(doubt) + mark;
}
