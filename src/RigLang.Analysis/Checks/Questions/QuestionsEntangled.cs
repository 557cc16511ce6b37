using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>Questions that rest on each other have no common answer.</summary>
public sealed class QuestionsEntangled : QuestionCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL914",
        Slug = "questions-entangled",
        Severity = Severity.Error,
        Summary = "Questions with `?` rest on each other and can't be answered together.",
        Why = "What one asks for moves with the answer to the other. Up to three wishes for values are solved together; a least or a most among them has no meaning, and some wishes can't be met at once.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge ? for energy-left = 40 %
                leg coast
                    distance 190 km
                    speed ? most energy-left within 60 km/h .. 100 km/h
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge ? for energy-left = 40 %
                leg coast
                    distance 190 km
                    speed ? least energy-used within 60 km/h .. 100 km/h
                    climb 0 m
            """),
        Fix = "Write a value for one of them, or ask by a result that doesn't rest on the other: least `energy-used` where most `energy-left` was asked.",
        CanBeAllowed = false,
    };

    public override IEnumerable<Finding> Run(Study study, Answer answer)
    {
        if (answer.Sort != AnswerSort.Refused)
        {
            yield break;
        }

        var others = answer.With.Select(other => $"`{other.Name} ? {(other.Target is null ? "" : "for ")}{other.Wish}`").ToList();
        var with = others.Count == 0 ? "" : $" together with {string.Join(" and ", others)}";
        yield return Report(answer.Unknown.Place, $"This question isn't answered{with}: {answer.Why}.") with
        {
            Related = [.. answer.With.Select(other => new Related(other.Place, "rests on it, and it on this"))],
        };
    }
}
