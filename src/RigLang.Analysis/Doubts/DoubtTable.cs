using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;

namespace RigLang.Analysis.Doubts;

/// <summary>
/// The doubts about the results of one study. Each uncertain fact is moved by one standard deviation to both sides, once for all results that are asked about; a
/// result is asked only for the facts that it rests on. Safe to use from several threads.
/// </summary>
public sealed class DoubtTable
{
    // A hover, a table and a check ask about the same study, which never changes.
    private static readonly ConditionalWeakTable<Study, DoubtTable> Tables = [];

    private readonly Study study;
    private readonly Dictionary<FactRef, (Study Below, Study Above)> sides = [];
    private readonly Dictionary<(IResult, ISubject), Doubt?> known = [];
    private readonly Lock gate = new();

    private DoubtTable(Study study)
    {
        this.study = study;
    }

    /// <summary>The doubt about a result of a subject; null where the result isn't computed.</summary>
    public static Doubt? Of(IResult result, ISubject subject) => Tables.GetValue(subject.Study, study => new DoubtTable(study)).Find(result, subject);

    private Doubt? Find(IResult result, ISubject subject)
    {
        lock (gate)
        {
            if (!known.TryGetValue((result, subject), out var doubt))
            {
                known[(result, subject)] = doubt = result.Compute(subject) is { IsComputed: true } node ? Make(result, subject, node) : null;
            }

            return doubt;
        }
    }

    private Doubt Make(IResult result, ISubject subject, Node<double> node)
    {
        var parts = ImmutableArray.CreateBuilder<DoubtPart>();
        var unspread = ImmutableArray.CreateBuilder<NumericFact>();
        foreach (var fact in NumericFacts.Under(node))
        {
            if (fact.HalfWidth > 0)
            {
                var (below, above) = Sides(fact);
                parts.Add(PartOf(fact, node.Value, below.ValueHere(result, subject), above.ValueHere(result, subject)));
            }
            else if (fact.Origin == ReadOrigin.Estimate)
            {
                unspread.Add(fact);
            }
        }

        var known = parts.Where(part => part.Effect != 0 || part.Bend != 0).OrderByDescending(part => Math.Abs(part.Effect)).ToImmutableArray();
        return new Doubt(node.Value, Math.Sqrt(known.Sum(part => part.Effect * part.Effect)), known, unspread.ToImmutable());
    }

    /// <summary>At one deviation to each side, which is half of the half-width; where one side leaves the result without a number, the other tells the slope.</summary>
    private static DoubtPart PartOf(NumericFact fact, double middle, double below, double above) => (double.IsNaN(below), double.IsNaN(above)) switch
    {
        (false, false) => new DoubtPart(fact, above - below, ((above + below) / 2) - middle),
        (true, false) => new DoubtPart(fact, 2 * (above - middle), double.NaN),
        (false, true) => new DoubtPart(fact, 2 * (middle - below), double.NaN),
        _ => new DoubtPart(fact, 0, double.NaN),
    };

    private (Study Below, Study Above) Sides(NumericFact fact)
    {
        if (!sides.TryGetValue(fact.Fact, out var both))
        {
            var below = Variation.Of(fact.Fact, fact.Value - (fact.HalfWidth / 2));
            sides[fact.Fact] = both = (study.With(below), study.With(below.At(fact.Value + (fact.HalfWidth / 2))));
        }

        return both;
    }
}
