using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;

namespace RigLang.Analysis.Doubts;

/// <summary>
/// A result computed again and again with its uncertain facts drawn by chance, each from a normal distribution about its value: what the first order can't tell of a
/// result that is bent. The same draws every time, so that a figure doesn't change by itself.
/// </summary>
/// <param name="Low">SI: one draw out of 40 is below.</param>
/// <param name="High">SI: one draw out of 40 is above.</param>
/// <param name="Count">Draws that gave a number.</param>
/// <param name="Failed">Draws in which the result couldn't be computed.</param>
public sealed record Draws(double Low, double High, int Count, int Failed)
{
    public const int Usual = 1000;

    private const int Seed = 20260905;
    private const double Tail = 0.025;

    /// <summary>Half of the width between both ends.</summary>
    public double HalfWidth => (High - Low) / 2;

    /// <summary>Null where the result isn't computed, or too few draws give a number.</summary>
    /// <param name="count">How many draws.</param>
    public static Draws? Of(IResult result, ISubject subject, int count = Usual, CancellationToken cancel = default)
    {
        if (result.Compute(subject) is not { IsComputed: true } node)
        {
            return null;
        }

        var facts = NumericFacts.Under(node).Where(fact => fact.HalfWidth > 0).ToList();
        var chance = new Random(Seed);
        var values = new List<double>(count);
        var tried = Variation.Of(facts.Select(fact => new KeyValuePair<FactRef, double>(fact.Fact, fact.Value)));
        for (var draw = 0; draw < count; draw++)
        {
            cancel.ThrowIfCancellationRequested();
            var drawn = tried.At(facts.Select(fact => new KeyValuePair<FactRef, double>(fact.Fact, fact.Value + (fact.HalfWidth / 2 * Normal.Quantile(Between(chance))))));
            var value = subject.Study.With(drawn).ValueHere(result, subject);
            if (!double.IsNaN(value))
            {
                values.Add(value);
            }
        }

        values.Sort();
        return values.Count < 1 / Tail ? null : new Draws(At(values, Tail), At(values, 1 - Tail), values.Count, count - values.Count);
    }

    /// <summary>Never 0 and never 1.</summary>
    private static double Between(Random chance) => Math.Clamp(chance.NextDouble(), 1e-9, 1 - 1e-9);

    private static double At(List<double> sorted, double share)
    {
        var place = share * (sorted.Count - 1);
        var below = (int)place;
        var above = Math.Min(below + 1, sorted.Count - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }
}
