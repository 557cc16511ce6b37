using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Answering;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Hovering;

/// <summary>A question mark in place of a value: what was found for it, or that nobody knows.</summary>
internal static class QueryCard
{
    public static CardText Of(Spot spot, QuerySyntax query)
    {
        if (query.Goal != QueryGoal.None && spot.Linked is { } declaration && spot.Fact is { } line)
        {
            var answers = AnswersAt.Of(spot.View, declaration, line).ToList();
            var card = new CardText().Paragraph($"**{line.Title} ?** {spot.Syntax.TextOf(query.Span).TrimStart('?').Trim()}");
            foreach (var (study, answer) in answers)
            {
                card.Paragraph(Words(study, answer, answers.Count > 1, SubjectUnits.Of(study.Subjects[0], spot.State.Units)));
            }

            return answers.Count > 0 ? card : card.Paragraph("Not answered: nothing in sight has such a result, or the question can't be understood.");
        }

        var open = new CardText().Paragraph("**?** asked and not known");
        return spot.Declared is { } fact ? open.Paragraph(StandIns.For(spot, fact)).Paragraph(fact.Estimate is null ? $"Until it is known: {fact.Else}" : $"Until it is known the estimate stands in, and every result that reads it is marked: {fact.Else}") : open;
    }

    private static string Words(Study study, Answer answer, bool isOneOfSeveral, UnitChoice units)
    {
        var unknown = answer.Unknown;
        var forWhom = isOneOfSeveral ? $"In {study.Subjects[0].Title}: " : "";
        string Reached() => unknown.Target is null ? units.Write(unknown.Result, answer.Subject!, answer.Reached) : AnswerWords.Result(answer, answer.Reached);
        switch (answer.Sort)
        {
            case AnswerSort.Found:
                var others = answer.Others.IsEmpty ? "" : $" So would {string.Join(" and ", answer.Others.Select(other => AnswerWords.Value(unknown, other)))}; the nearest to the usual value is taken.";
                var with = answer.With.IsEmpty ? "" : $" Solved together with {string.Join(" and ", answer.With.Select(other => $"`{other.Name}`"))}.";
                var binds = unknown.Target is null && AnswerWords.Binds(answer) is { Length: > 0 } why ? $" {Phrase.Capital(why)}." : "";
                return $"{forWhom}**{AnswerWords.Value(unknown, answer.Value)}** gives {unknown.Result.Name}{AnswerWords.Where(answer)} {Reached()}. Every other result reads this value.{others}{with}{binds}";
            case AnswerSort.OutOfReach:
                return $"{forWhom}Out of reach: the nearest is {Reached()}, with {AnswerWords.Value(unknown, answer.Value)}; {AnswerWords.Binds(answer)}.";
            case AnswerSort.NotComputed:
                return $"{forWhom}`{unknown.Result.Name}`{AnswerWords.Where(answer)} isn't computed{(answer.Missing is { } missing ? $": it needs {missing.Words}" : "")}.";
            case AnswerSort.NoEffect:
                return $"{forWhom}`{unknown.Result.Name}` doesn't rest on `{unknown.Name}`.";
            default:
                return $"{forWhom}Not answered: {answer.Why}.";
        }
    }
}
