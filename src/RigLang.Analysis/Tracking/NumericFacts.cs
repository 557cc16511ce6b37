using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Analysis.Tracking;

/// <summary>A number among the facts that a result rests on.</summary>
/// <param name="Value">SI; of a place, metres rearward of its point.</param>
/// <param name="HalfWidth">SI, two standard deviations: as written, or the spread of what stands in; zero where nobody says.</param>
/// <param name="Read">The read that came to it.</param>
public sealed record NumericFact(FactRef Fact, QuantityKind Kind, double Value, double HalfWidth, FactRead Read)
{
    public ReadOrigin Origin => Read.Origin;
}

/// <summary>The numbers at the ends of a computation's reads: what can be varied to move it.</summary>
public static class NumericFacts
{
    /// <summary>
    /// Each once, in the order in which they were read; written, assumed, estimated and meant by default alike. An estimate comes before what it was made from.
    /// </summary>
    public static IEnumerable<NumericFact> Under(params IEnumerable<Node> nodes)
    {
        var facts = new HashSet<FactRef>();
        var seen = new HashSet<Node>(ReferenceEqualityComparer.Instance as IEqualityComparer<Node>);
        // A stack of its own: the legs of a trip hang on one another, so a long one goes deep.
        var open = new Stack<Read>(nodes.Reverse().Select(node => new ComputationRead(node)));
        while (open.TryPop(out var next))
        {
            switch (next)
            {
                case ComputationRead { Node: var node } when seen.Add(node):
                    Push(open, node.Reads);
                    break;
                case FactRead read:
                    Push(open, read.Inner);
                    foreach (var number in NumbersOf(read).Where(number => facts.Add(number.Fact)))
                    {
                        yield return number;
                    }

                    break;
            }
        }
    }

    private static IEnumerable<NumericFact> NumbersOf(FactRead read)
    {
        switch (read.Origin)
        {
            case ReadOrigin.Practice when read is { Line: { } assume, Fact.Kind: { } kind }:
                return [new NumericFact(FactRef.Of(read.Block, assume), kind, read.Value, read.HalfWidth, read)];
            case ReadOrigin.Absent or ReadOrigin.Missing or ReadOrigin.StandIn:
                return [];
        }

        if (!double.IsNaN(read.Value) && !read.Fact.Repeats && FactRef.Of(read.Block, read.Fact) is { Kind: { } own } fact)
        {
            // A reserve read as a line has the half-width that the line says.
            var written = read.Origin == ReadOrigin.Written ? fact.Written : null;
            return [new NumericFact(fact, own, read.Value, written?.HalfWidth ?? read.HalfWidth, read)];
        }

        return read.Line is { } line
            ? FactRef.AllOf(read.Block, line).Select(number => new NumericFact(number, number.Kind!, ValueOf(read.Held ?? line, number.Role), number.Written!.HalfWidth, read))
            : [];
    }

    /// <summary>SI; of a place, metres rearward of its point.</summary>
    private static double ValueOf(Fact line, string role) =>
        line.Values[role] is PositionValue place ? place.Offset : line.MeasureOf(role)!.Value;

    private static void Push(Stack<Read> open, IReadOnlyList<Read> reads)
    {
        for (var index = reads.Count - 1; index >= 0; index--)
        {
            open.Push(reads[index]);
        }
    }
}
