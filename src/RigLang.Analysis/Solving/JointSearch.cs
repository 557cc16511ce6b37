using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Solving;

/// <summary>Answers questions that rest on each other: Broyden's method on all at once, from several starts within their ranges.</summary>
internal static class JointSearch
{
    private const int MostTogether = 3;
    private const double Middle = 0.5;

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

        var problem = new JointProblem(questions, study, cancel);
        var found = new List<double[]>();
        // More starts only for want of an answer.
        foreach (var start in Starts(questions, [0.15, 0.85]).Prepend(Usual(questions)).Concat(Starts(questions, [0.15, Middle, 0.85]).Where(start => start.Contains(Middle)).TakeWhile(_ => found.Count == 0)))
        {
            if (problem.Search(start, found) is { } place && !found.Exists(other => IsAlike(other, place)))
            {
                found.Add(place);
            }
        }

        if (found.Count == 0)
        {
            return Refuse(questions, "no values within their ranges were found that meet all the wishes at once");
        }

        var usual = Usual(questions);
        var best = found.MinBy(place => place.Zip(usual).Sum(pair => (pair.First - pair.Second) * (pair.First - pair.Second)))!;
        return questions.Select((question, index) => new Answer(question.Unknown, question.Subject, AnswerSort.Found, JointProblem.Value(question, best[index]), question.Unknown.Target!.Value)
        {
            Range = (question.Range.Low, question.Range.High),
            Others = [.. found.Where(place => place != best).Select(place => JointProblem.Value(question, place[index])).Order()],
            With = Others(questions, question),
            Looks = problem.Looks,
        });
    }

    private static bool IsAlike(double[] one, double[] other) => one.Zip(other).All(pair => Math.Abs(pair.First - pair.Second) < 1e-6);

    private static double[] Usual(ImmutableArray<Question> questions) => [.. questions.Select(question => Math.Clamp((question.Range.Usual - question.Range.Low) / (question.Range.High - question.Range.Low), 0.01, 0.99))];

    /// <summary>Every way to begin each of them at one of the shares of its range.</summary>
    private static IEnumerable<double[]> Starts(ImmutableArray<Question> questions, double[] shares)
    {
        var count = (int)Math.Pow(shares.Length, questions.Length);
        for (var number = 0; number < count; number++)
        {
            var rest = number;
            var start = new double[questions.Length];
            for (var index = 0; index < start.Length; index++, rest /= shares.Length)
            {
                start[index] = shares[rest % shares.Length];
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
}
