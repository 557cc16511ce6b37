using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Solving;

/// <summary>Answers questions that rest on each other: Newton's method on all at once, from several starts within their ranges.</summary>
internal static class JointSearch
{
    private const int MostTogether = 3;
    private const int MostSteps = 30;
    private const double Close = 1e-9;
    private const double Step = 1e-5;
    private static readonly double[] Starts = [0.5, 0.15, 0.85];

    public static IEnumerable<Answer> Answer(ImmutableArray<Question> questions, Study study, CancellationToken cancel)
    {
        if (questions.Length > MostTogether)
        {
            return Refuse(questions, $"more than {MostTogether} that hang on each other aren't solved together");
        }

        if (questions.Any(question => question.Unknown.Goal != QueryGoal.Value))
        {
            return Refuse(questions, "least and most of one move with the value of the other, so there is no one answer");
        }

        if (questions.Any(question => question.Unknown.Fact.Kind!.IsCount))
        {
            return Refuse(questions, "whole numbers aren't solved together with others");
        }

        var problem = new Problem(questions, study, cancel);
        var found = new List<double[]>();
        foreach (var start in StartsOf(questions))
        {
            if (problem.Search(start) is { } place && !found.Exists(other => other.Zip(place).All(pair => Math.Abs(pair.First - pair.Second) < 1e-6)))
            {
                found.Add(place);
            }
        }

        if (found.Count == 0)
        {
            return Refuse(questions, "no values within their ranges were found that meet all the wishes at once");
        }

        var usual = questions.Select(question => Share(question, question.Range.Usual)).ToArray();
        var best = found.MinBy(place => place.Zip(usual).Sum(pair => (pair.First - pair.Second) * (pair.First - pair.Second)))!;
        return questions.Select((question, index) => new Answer(question.Unknown, question.Subject, AnswerSort.Found, Value(question, best[index]), question.Unknown.Target!.Value)
        {
            Range = (question.Range.Low, question.Range.High),
            Others = [.. found.Where(place => place != best).Select(place => Value(question, place[index])).Order()],
            With = Others(questions, question),
        });
    }

    private static IEnumerable<double[]> StartsOf(ImmutableArray<Question> questions)
    {
        yield return [.. questions.Select(question => Math.Clamp(Share(question, question.Range.Usual), 0.01, 0.99))];
        var count = (int)Math.Pow(Starts.Length, questions.Length);
        for (var number = 0; number < count; number++)
        {
            var rest = number;
            var start = new double[questions.Length];
            for (var index = 0; index < start.Length; index++, rest /= Starts.Length)
            {
                start[index] = Starts[rest % Starts.Length];
            }

            yield return start;
        }
    }

    private static ImmutableArray<Unknown> Others(ImmutableArray<Question> questions, Question question) => [.. questions.Where(other => other != question).Select(other => other.Unknown)];

    private static IEnumerable<Answer> Refuse(ImmutableArray<Question> questions, string why) =>
        questions.Select(question => new Answer(question.Unknown, question.Subject, AnswerSort.Refused, double.NaN, double.NaN)
        {
            Range = (question.Range.Low, question.Range.High),
            With = Others(questions, question),
            Why = why,
        });

    private static double Share(Question question, double value) => (value - question.Range.Low) / (question.Range.High - question.Range.Low);

    private static double Value(Question question, double share) => question.Range.Low + (share * (question.Range.High - question.Range.Low));

    /// <summary>Values as shares of their ranges; misses as shares of their targets.</summary>
    private sealed class Problem(ImmutableArray<Question> questions, Study study, CancellationToken cancel)
    {
        public double[]? Search(double[] start)
        {
            var place = start;
            var miss = Miss(place);
            for (var step = 0; step < MostSteps && miss is not null; step++)
            {
                if (miss.Max(Math.Abs) < Close)
                {
                    return place;
                }

                if (Slopes(place, miss) is not { } slopes || LinearSystem.Solve(slopes, [.. miss.Select(one => -one)]) is not { } towards || Better(place, miss, towards) is not { } better)
                {
                    return null;
                }

                (place, miss) = better;
            }

            return null;
        }

        /// <summary>Along the step as far as it comes nearer, within the ranges.</summary>
        private (double[], double[])? Better(double[] place, double[] miss, double[] step)
        {
            for (var share = 1.0; share > 1e-3; share /= 2)
            {
                double[] next = [.. place.Zip(step, (at, by) => Math.Clamp(at + (share * by), 0, 1))];
                if (Miss(next) is { } other && other.Sum(one => one * one) < miss.Sum(one => one * one))
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

        /// <summary>Null where one of the results isn't computed.</summary>
        private double[]? Miss(double[] place)
        {
            cancel.ThrowIfCancellationRequested();
            var tried = study.With(Variation.Solved(questions.Select((question, index) => new KeyValuePair<FactRef, double>(question.Unknown.Fact, Value(question, place[index])))));
            var miss = new double[questions.Length];
            for (var index = 0; index < questions.Length; index++)
            {
                var target = questions[index].Unknown.Target!.Value;
                if (questions[index].ResultOf(questions[index].Subject!, tried) is not { IsComputed: true } node)
                {
                    return null;
                }

                miss[index] = (node.Value - target) / (target == 0 ? 1 : Math.Abs(target));
            }

            return miss;
        }
    }
}
