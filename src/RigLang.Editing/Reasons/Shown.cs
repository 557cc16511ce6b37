using RigLang.Analysis.Doubts;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;

namespace RigLang.Editing.Reasons;

/// <summary>How results are written, in one place.</summary>
public static class Shown
{
    public const string Estimated = "estimated";

    /// <summary>"1180 kg", or "not computed: needs `wheelbase` of vehicle van".</summary>
    public static string Value(IResult result, Node node, UnitChoice units) => node.IsComputed ? units.Write(result, node.Subject, node.Number) : NotComputed(node);

    /// <summary>The same with its doubt, and marked where an estimate went into it: "1180 kg ± 12 kg (estimated)".</summary>
    public static string Marked(IResult result, Node node, UnitChoice units) => Value(result, node, units) + Doubt(result, node, units) + Mark(node);

    /// <summary>" ± 12 kg", which holds the truth 19 times out of 20; empty where nothing is in doubt, or less than is shown.</summary>
    public static string Doubt(IResult result, Node node, UnitChoice units) =>
        DoubtTable.Of(result, node.Subject) is { } doubt && units.WriteHalfWidth(result, node.Subject, doubt.Value, doubt.HalfWidth) is { Length: > 0 } half ? $" ± {half}" : "";

    public static string Mark(Node node) => node is { IsComputed: true, IsEstimated: true } ? $" ({Estimated})" : "";

    public static string NotComputed(Node node) =>
        node.Missing is { } missing ? $"not computed: needs {missing.Words}"
        : node is { Refusal: { } answer, Computation: IResult { NoneIsAnswer: true } } ? answer
        : node.Applies ? $"not computed: {node.Refusal ?? "the facts give no number"}" : "does not apply";
}
