using RigLang.Analysis.Tracking;

namespace RigLang.Editing.Reasons;

/// <summary>The facts at the ends of a computation's reads.</summary>
internal static class Ground
{
    /// <summary>Every fact that a number rests on, in the order in which they were read, each once; those that were looked for in vain and not needed are left out.</summary>
    public static IEnumerable<FactRead> Of(params IEnumerable<Node> nodes)
    {
        var facts = new HashSet<(object, object, object?)>();
        var seen = new HashSet<Node>(ReferenceEqualityComparer.Instance as IEqualityComparer<Node>);
        var open = new Stack<Read>(nodes.Reverse().Select(node => new ComputationRead(node)));
        while (open.TryPop(out var next))
        {
            switch (next)
            {
                case ComputationRead { Node: var node } when seen.Add(node):
                    Push(open, node.Reads);
                    break;
                case FactRead { Origin: not ReadOrigin.Absent } fact when facts.Add((fact.Block, fact.Fact, fact.Line)):
                    Push(open, fact.Inner);
                    yield return fact;
                    break;
            }
        }
    }

    private static void Push(Stack<Read> open, IReadOnlyList<Read> reads)
    {
        for (var index = reads.Count - 1; index >= 0; index--)
        {
            open.Push(reads[index]);
        }
    }
}
