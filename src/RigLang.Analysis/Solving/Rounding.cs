using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Solving;

/// <summary>Answers as a person would write them: with as few digits as still meet the wish.</summary>
public static class Rounding
{
    /// <summary>A least or most may be worse by this share of what it is.</summary>
    private const double WorthLess = 1e-3;
    private const int MostMoreDecimals = 6;

    /// <summary>How far (SI) a result may be from a wished value and still be written like it: its ±, else half of its last digit.</summary>
    public static double Tolerance(Measure target) =>
        target.HalfWidth > 0 ? target.HalfWidth : target.Unit.HalfWidthToSi(0.5 * Math.Pow(10, -target.Decimals), target.Value);

    /// <summary>
    /// The value of an answer that was found, in the unit of its author and rounded so that the wish is still met with the rounded value.
    /// </summary>
    /// <param name="study">The solved study that has the answer.</param>
    /// <param name="answer">What was found.</param>
    public static Measure Of(Study study, Answer answer)
    {
        var unknown = answer.Unknown;
        var kind = unknown.Fact.Kind!;
        var unit = UnitOf(unknown);
        var number = unit.FromSi(answer.Value);
        var fewest = kind.IsCount ? 0 : unit == kind.Metric ? Math.Max(0, kind.MetricDecimals - 1) : unit == kind.Us ? Math.Max(0, kind.UsDecimals - 1) : 0;
        for (var decimals = fewest; !kind.IsCount && decimals < fewest + MostMoreDecimals; decimals++)
        {
            var rounded = Measure.Of(kind, Math.Round(number, decimals, MidpointRounding.AwayFromZero), unit, decimals);
            if (IsWithin(answer, rounded.Value) && Meets(study, answer, rounded.Value))
            {
                return rounded;
            }
        }

        return Measure.Of(kind, number, unit, kind.IsCount ? 0 : fewest + MostMoreDecimals);
    }

    private static bool IsWithin(Answer answer, double value) => value >= answer.Range.Low && value <= answer.Range.High;

    private static bool Meets(Study study, Answer answer, double value)
    {
        var unknown = answer.Unknown;
        var question = new Question(unknown, [], default);
        if (question.ResultOf(answer.Subject!, study.With(Variation.Solved([new(unknown.Fact, value)]))) is not { IsComputed: true } node)
        {
            return false;
        }

        return unknown.Goal == QueryGoal.Value
            ? Math.Abs(node.Value - unknown.Target!.Value) <= Tolerance(unknown.Target) * (1 - 1e-6)
            : Math.Abs(node.Value - answer.Reached) <= WorthLess * Math.Abs(answer.Reached);
    }

    /// <summary>The unit in which the declaration's author writes such things.</summary>
    internal static Unit UnitOf(Unknown unknown)
    {
        if (unknown.Within is { } within)
        {
            return within.Low.Unit;
        }

        var (root, kind) = (unknown.Root, unknown.Fact.Kind!);
        var written = root.WithInner().SelectMany(block => block.Facts).Where(fact => fact.Declaration == unknown.Line.Declaration)
            .Concat(root.WithInner().SelectMany(block => block.Facts))
            .SelectMany(fact => fact.Values.Values).OfType<MeasureValue>().FirstOrDefault(value => value.Measure.Kind == kind);
        return written?.Measure.Unit ?? kind.Metric;
    }
}
