namespace RigLang.Analysis.Tracking;

/// <summary>The facts at the ends of a computation's reads.</summary>
public static class Ground
{
    /// <summary>Every fact that a number rests on, in the order in which they were read, each once; those that were looked for in vain and not needed are left out.</summary>
    public static IEnumerable<FactRead> Of(params IEnumerable<Node> nodes) => Under(nodes, withAbsent: false);

    /// <summary>The same, with those that were looked for in vain and not needed.</summary>
    public static IEnumerable<FactRead> WithAbsent(Node node) => Under([node], withAbsent: true);

    /// <summary>Keeps what is still to be seen in a stack of its own: the legs of a trip hang on one another, so a long one goes deep.</summary>
    private static IEnumerable<FactRead> Under(IEnumerable<Node> nodes, bool withAbsent)
    {
        var facts = new HashSet<(object, object, object?, bool)>();
        var seen = new HashSet<Node>(ReferenceEqualityComparer.Instance as IEqualityComparer<Node>);
        var open = new Stack<Read>(nodes.Reverse().Select(node => new ComputationRead(node)));
        while (open.TryPop(out var next))
        {
            switch (next)
            {
                case ComputationRead { Node: var node } when seen.Add(node):
                    Push(open, node.Reads);
                    break;
                // One that is missing may have a stand-in beside it, which is another thing to say.
                case FactRead { Origin: var origin } fact when (withAbsent || origin != ReadOrigin.Absent) && facts.Add((fact.Block, fact.Fact, fact.Line, origin == ReadOrigin.Absent)):
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
