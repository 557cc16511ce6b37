using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tracking;

/// <summary>
/// Which computations some facts come to. It rests on which facts they are and not on their values, so a search that tries one value after the other finds it out
/// once. Safe to use from several threads.
/// </summary>
internal sealed class Reach
{
    private readonly HashSet<FactRef> facts;
    private readonly HashSet<(Block, FactDeclaration)> single = [];
    private readonly HashSet<Fact> lines = new(ReferenceEqualityComparer.Instance as IEqualityComparer<Fact>);
    private readonly Dictionary<Node, bool> known = new(ReferenceEqualityComparer.Instance as IEqualityComparer<Node>);

    public Reach(IEnumerable<FactRef> facts)
    {
        this.facts = [.. facts];
        foreach (var fact in this.facts)
        {
            if (!fact.Fact.Repeats)
            {
                single.Add((fact.Block, fact.Fact));
            }

            if (fact is { Line: { } line, IsAssumption: false })
            {
                lines.Add(line);
            }
        }
    }

    /// <summary>Whether a computation's reads come to one of the facts.</summary>
    public bool Holds(Node node)
    {
        lock (known)
        {
            if (known.TryGetValue(node, out var isKnown))
            {
                return isKnown;
            }

            // A stack of its own: the legs of a trip hang on one another, so a long one goes deep.
            var open = new Stack<Node>();
            open.Push(node);
            while (open.TryPeek(out var next))
            {
                if (known.ContainsKey(next))
                {
                    open.Pop();
                    continue;
                }

                var count = open.Count;
                var isReached = Reads(next);
                foreach (var under in isReached ? [] : next.Under)
                {
                    if (!known.TryGetValue(under, out var isUnderReached))
                    {
                        open.Push(under);
                    }

                    isReached |= isUnderReached;
                }

                if (isReached || open.Count == count)
                {
                    known[next] = isReached;
                }
            }

            return known[node];
        }
    }

    private bool Reads(Node node)
    {
        foreach (var read in node.Reads)
        {
            if (Touches(read))
            {
                return true;
            }
        }

        return false;
    }

    private bool Touches(Read read) => read is FactRead fact
        && ((fact.Fact.Repeats ? fact.Line is { } line && lines.Contains(line) : single.Contains((fact.Block, fact.Fact)))
            || (fact is { Origin: ReadOrigin.Practice, Line: { } assume } && facts.Contains(FactRef.Of(fact.Block, assume)))
            || (!fact.Inner.IsDefaultOrEmpty && fact.Inner.Any(Touches)));
}
