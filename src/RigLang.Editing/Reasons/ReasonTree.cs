using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Model.Linking;

namespace RigLang.Editing.Reasons;

/// <summary>
/// From a computation that was carried out to the answer to "why this number?": results with their formulas, steps, and at the ends the facts with their lines.
/// What several steps read is one object in the tree, so it stays as small as the computation.
/// </summary>
public sealed class ReasonTree
{
    private readonly Workspace workspace;
    private readonly UnitChoice units;
    private readonly Dictionary<FactRead, Reason> facts = [];
    private readonly Dictionary<Node, Reason> known = new(ReferenceEqualityComparer.Instance as IEqualityComparer<Node>);

    private ReasonTree(Workspace workspace, UnitChoice units)
    {
        this.workspace = workspace;
        this.units = units;
    }

    /// <param name="workspace">The state of the files that the node was computed in; gives the places their lines.</param>
    /// <param name="node">The computation asked about.</param>
    /// <param name="units">For the units of results and estimates; facts keep their author's.</param>
    public static Reason Of(Workspace workspace, Node node, UnitChoice units) => new ReasonTree(workspace, units).Of(node);

    private Reason Of(Node node)
    {
        if (known.TryGetValue(node, out var made))
        {
            return made;
        }

        // The legs of a trip hang on one another: of a very long one the far end is left out rather than the stack used up.
        ImmutableArray<Reason> because = RuntimeHelpers.TryEnsureSufficientExecutionStack() ? [.. node.Reads.Select(Of).OfType<Reason>().Distinct()] : [];
        var reason = node.Computation is IResult result
            ? new Reason(result.Title, result.Name, Shown.Value(result, node, units), ReasonSort.Result, null, result.Formula, because) { Number = node.IsComputed ? node.Number : double.NaN, Source = result.Source }
            : new Reason(node.Computation.Name, node.Computation.Name, "", ReasonSort.Step, null, "", because);
        known[node] = reason;
        return reason;
    }

    private Reason? Of(Read read) => read switch
    {
        ComputationRead { Node: var node } => Of(node),
        FactRead { Origin: ReadOrigin.Absent } => null,
        FactRead fact => facts.TryGetValue(fact, out var known) ? known : facts[fact] = Of(fact),
        _ => null,
    };

    private Reason Of(FactRead read)
    {
        var place = read.Line is { } line ? PlaceMap.Of(workspace, line.Place) : null;
        var inner = read.Inner.Select(Of).OfType<Reason>().Distinct().ToImmutableArray();
        Reason Make(string fact, string value, ReasonSort sort, string note) =>
            new(BlockWords.Of(read.Block, fact), read.Fact.FullName, value, sort, place, note, inner) { Number = read.Value };
        var computed = read.Fact.Kind is { } kind && !double.IsNaN(read.Value) ? units.Write(read.Value, kind) : "";
        return read.Origin switch
        {
            ReadOrigin.Written or ReadOrigin.Varied => Make(read.Line?.Title ?? read.Fact.Keyword, BlockWords.Value(read, units), ReasonSort.Written, ""),
            ReadOrigin.Solved => Make(read.Line?.Title ?? read.Fact.Keyword, BlockWords.Found(read, units), ReasonSort.Solved, read.Line is { } asked ? $"found for {BlockWords.Wish(asked)}" : "found"),
            ReadOrigin.Practice => Make(read.Fact.Keyword, computed, ReasonSort.Assumed, "assumed by the practice"),
            ReadOrigin.Default => Make(read.Fact.Keyword, computed, ReasonSort.Default, "what no line means"),
            ReadOrigin.Estimate => Make(read.Fact.Keyword, computed, ReasonSort.Estimated, read.Fact.Else),
            ReadOrigin.StandIn => Make(read.Fact.Keyword, computed, ReasonSort.Estimated, read.Fact.Else),
            _ => Make(read.Fact.Keyword, "", ReasonSort.Missing, "not known"),
        };
    }
}
