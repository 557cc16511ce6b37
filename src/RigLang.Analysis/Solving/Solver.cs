using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Solving;

/// <summary>
/// Answers the questions of a study: each one after those that it rests on, those that rest on each other together. What is found holds in the study that comes
/// back, for every result that reads it.
/// </summary>
public static class Solver
{
    /// <summary>Nobody writes more by hand, and each costs as much as a few dozen looks at the results.</summary>
    private const int MostQuestions = 64;

    /// <summary>The study itself where it asks nothing, else a variation of it with its answers.</summary>
    /// <exception cref="OperationCanceledException">It was called off; nothing of it is kept.</exception>
    public static Study Solve(Study study, CancellationToken cancel = default)
    {
        var questions = Question.In(study).DistinctBy(question => (question.Unknown.Line, question.Unknown.Fact.Role)).ToList();
        if (questions.Count == 0)
        {
            return study;
        }

        var answers = new List<Answer>();
        answers.AddRange(questions.Skip(MostQuestions).Select(question => new Answer(question.Unknown, null, AnswerSort.Refused, double.NaN, double.NaN)
        {
            Why = $"no more than {MostQuestions} questions are answered for one declaration",
        }));
        var (bound, orders) = Bind(study, questions.Take(MostQuestions).ToList(), answers);
        var found = new Dictionary<FactRef, double>();
        foreach (var group in orders)
        {
            cancel.ThrowIfCancellationRequested();
            var now = study.With(Variation.Solved(found));
            var members = group.Select(index => bound[index]).ToImmutableArray();
            foreach (var answer in members is [var one] ? [SingleSearch.Answer(one, now, cancel)] : JointSearch.Answer(members, now, cancel))
            {
                answers.Add(answer);
                if (answer.IsFound)
                {
                    found[answer.Unknown.Fact] = answer.Value;
                }
            }
        }

        var solved = study.With(Variation.Solved(found));
        solved.Answers = [.. questions.Select(question => answers.First(answer => ReferenceEquals(answer.Unknown, question.Unknown)))];
        return solved;
    }

    /// <summary>Whose result each asks for, and the order in which they can be answered. What can't be asked is answered at once.</summary>
    private static (List<Question> Bound, List<List<int>> Groups) Bind(Study study, List<Question> questions, List<Answer> answers)
    {
        // With a value for each, every result reads what it rests on; without, it would stop at the first one missing.
        var seeded = study.With(Variation.Solved(questions.DistinctBy(question => question.Unknown.Fact).Select(question => new KeyValuePair<FactRef, double>(question.Unknown.Fact, question.Range.Usual))));
        var bound = new List<Question>();
        var nodes = new List<Node>();
        foreach (var question in questions)
        {
            var own = Variation.Of(question.Unknown.Fact, 0);
            var subject = question.Subjects.FirstOrDefault(subject => question.ResultOf(subject, seeded) is { Applies: true } node && own.Reaches(node));
            if (subject is null)
            {
                var nearest = question.Subjects.FirstOrDefault(subject => question.ResultOf(subject, seeded) is not null);
                answers.Add(new Answer(question.Unknown, nearest, AnswerSort.NoEffect, double.NaN, double.NaN) { Instead = [.. Instead(question, own, seeded).Distinct().Take(4)] });
                continue;
            }

            bound.Add(question with { Subject = subject });
            nodes.Add(question.ResultOf(subject, seeded)!);
        }

        var needs = bound.Select((_, index) => bound.Select((other, at) => at != index && Variation.Of(other.Unknown.Fact, 0).Reaches(nodes[index])).ToArray()).ToArray();
        return (bound, Order.Of(needs));
    }

    /// <summary>What the fact does move, of the same subjects.</summary>
    private static IEnumerable<string> Instead(Question question, Variation own, Study seeded) =>
        from subject in question.Subjects
        from result in Catalogue.Results
        where result.Compute(seeded.Here(subject)!) is { IsComputed: true } node && own.Reaches(node)
        select result.Name;
}
