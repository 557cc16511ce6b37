using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>Several values give the wished result.</summary>
public sealed class QuestionWithSeveralAnswers : QuestionCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL913",
        Slug = "question-with-several-answers",
        Severity = Severity.Note,
        Summary = "Several values give what a `?` wishes for; the one nearest to the usual value is taken.",
        Why = "Both are true to the wish. Which one you want only you know.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 100 km
                    speed ? for energy-used = 11 kWh
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 100 km
                    speed ? for energy-used = 11 kWh within 35 km/h .. 100 km/h
                    climb 0 m
            """),
        Fix = "Say with `within LOW .. HIGH` which of them is meant.",
    };

    public override IEnumerable<Finding> Run(Study study, Answer answer)
    {
        if (!answer.IsFound || answer.Others.IsEmpty)
        {
            yield break;
        }

        var unknown = answer.Unknown;
        var all = answer.Others.Append(answer.Value).Order().Select(value => AnswerWords.Value(unknown, value)).ToList();
        var taken = AnswerWords.Value(unknown, answer.Value);
        yield return Report(unknown.Place, $"`{unknown.Wish}` comes of {string.Join(", ", all.SkipLast(1))} and of {all[^1]}; taken is {taken}, the nearest to the usual value.") with
        {
            Fixes = [.. answer.Others.Select(other => AnswerWords.Value(unknown, other)).Select(other => new Fix($"Write {other}", unknown.Place, other))],
        };
    }
}
