using RigLang.Analysis.Tracking;

namespace RigLang.Cli.Showing;

/// <summary>The facts under a result, its own reads and those of everything that it read, each once.</summary>
internal static class FactsRead
{
    public static IEnumerable<FactRead> By(Node node)
    {
        var seen = new HashSet<(object, object, object?)>();
        var nodes = new HashSet<Node>(ReferenceEqualityComparer.Instance);
        return Under(node, nodes).Where(read => seen.Add((read.Block, read.Fact, read.Line)));
    }

    private static IEnumerable<FactRead> Under(Node node, HashSet<Node> nodes) => nodes.Add(node) ? node.Reads.SelectMany(read => Under(read, nodes)) : [];

    private static IEnumerable<FactRead> Under(Read read, HashSet<Node> nodes) => read switch
    {
        FactRead fact => fact.Inner.SelectMany(inner => Under(inner, nodes)).Prepend(fact),
        ComputationRead computation => Under(computation.Node, nodes),
        _ => [],
    };
}
