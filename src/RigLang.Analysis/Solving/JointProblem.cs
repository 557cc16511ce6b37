using System.Collections.Immutable;
using RigLang.Analysis.Tracking;

namespace RigLang.Analysis.Solving;

/// <summary>
/// Values (as shares of their ranges) with which several results meet their wishes at once (misses as shares of what is wished). Newton's method with Broyden's
/// update: slopes are taken from the steps themselves, and measured anew only where these lead nowhere, since each look may be one at a whole trip.
/// </summary>
internal sealed class JointProblem
{
    private const int MostSteps = 40;
    private const double Close = 1e-9;
    private const double Step = 1e-5;
    private const double Beside = 1e-4;
    private const double ShortestStep = 0.03;

    /// <summary>Squares of misses have to fall by this at least, else the slopes count as stale.</summary>
    private const double Falls = 0.5;

    private readonly ImmutableArray<Question> questions;
    private readonly Study study;
    private readonly CancellationToken cancel;
    private readonly Variation tried;

    public JointProblem(ImmutableArray<Question> questions, Study study, CancellationToken cancel)
    {
        (this.questions, this.study, this.cancel) = (questions, study, cancel);
        tried = Variation.Solved(questions.Select(question => new KeyValuePair<FactRef, double>(question.Unknown.Fact, question.Range.Usual)));
    }

    /// <summary>How many times all the results were computed.</summary>
    public int Looks { get; private set; }

    /// <summary>SI.</summary>
    public static double Value(Question question, double share) => question.Range.Low + (share * (question.Range.High - question.Range.Low));

    /// <summary>Null where the way from the start ends nowhere, or at a place that is known.</summary>
    public double[]? Search(double[] start, IReadOnlyList<double[]> known)
    {
        var place = start;
        var miss = Miss(place);
        var slopes = miss is null ? null : Slopes(place, miss);
        var isFresh = true;
        for (var step = 0; step < MostSteps && miss is not null && slopes is not null; step++)
        {
            if (miss.Max(Math.Abs) < Close)
            {
                return place;
            }

            if (known.Any(other => other.Zip(place).All(pair => Math.Abs(pair.First - pair.Second) < Beside)))
            {
                return null;
            }

            var next = LinearSystem.Solve([.. slopes.Select(row => row.ToArray())], [.. miss.Select(one => -one)]) is { } towards ? Better(place, miss, towards) : null;
            if (next is not { } found)
            {
                if (isFresh)
                {
                    return null;
                }

                (slopes, isFresh) = (Slopes(place, miss), true);
                continue;
            }

            var (better, gap) = found;
            var isStale = !isFresh && Squares(gap) > Falls * Squares(miss);
            slopes = isStale ? Slopes(better, gap) : Updated(slopes, place, better, miss, gap);
            (place, miss, isFresh) = (better, gap, isStale);
        }

        return null;
    }

    private static double Squares(double[] miss) => miss.Sum(one => one * one);

    /// <summary>Along the step as far as it comes nearer, within the ranges.</summary>
    private (double[] Place, double[] Miss)? Better(double[] place, double[] miss, double[] step)
    {
        for (var share = 1.0; share > ShortestStep; share /= 2)
        {
            double[] next = [.. place.Zip(step, (at, by) => Math.Clamp(at + (share * by), 0, 1))];
            if (!next.SequenceEqual(place) && Miss(next) is { } other && Squares(other) < Squares(miss))
            {
                return (next, other);
            }
        }

        return null;
    }

    /// <summary>By question, then by value.</summary>
    private double[][]? Slopes(double[] place, double[] miss)
    {
        double[][] slopes = [.. miss.Select(_ => new double[place.Length])];
        for (var index = 0; index < place.Length; index++)
        {
            double[] beside = [.. place];
            var step = place[index] + Step <= 1 ? Step : -Step;
            beside[index] += step;
            if (Miss(beside) is not { } other)
            {
                return null;
            }

            for (var row = 0; row < miss.Length; row++)
            {
                slopes[row][index] = (other[row] - miss[row]) / step;
            }
        }

        return slopes;
    }

    /// <summary>The slopes nearest to those before with which the last step would have come out as it did (Broyden 1965).</summary>
    private static double[][] Updated(double[][] slopes, double[] from, double[] to, double[] before, double[] behind)
    {
        double[] step = [.. to.Zip(from, (next, last) => next - last)];
        var length = step.Sum(part => part * part);
        return
        [
            .. slopes.Select((row, index) =>
            {
                var off = behind[index] - before[index] - row.Zip(step, (slope, part) => slope * part).Sum();
                return row.Zip(step, (slope, part) => slope + (off * part / length)).ToArray();
            }),
        ];
    }

    /// <summary>Null where one of the results isn't computed.</summary>
    private double[]? Miss(double[] place)
    {
        cancel.ThrowIfCancellationRequested();
        Looks++;
        var now = study.With(tried.At(questions.Select((question, index) => new KeyValuePair<FactRef, double>(question.Unknown.Fact, Value(question, place[index])))));
        var miss = new double[questions.Length];
        for (var index = 0; index < questions.Length; index++)
        {
            var target = questions[index].Unknown.Target!.Value;
            if (questions[index].ResultOf(questions[index].Subject!, now) is not { IsComputed: true } node)
            {
                return null;
            }

            miss[index] = (node.Value - target) / (target == 0 ? 1 : Math.Abs(target));
        }

        return miss;
    }
}
