using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>A question asks for a fact by a result that doesn't rest on it.</summary>
public sealed class QuestionWithoutEffect : QuestionCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL911",
        Slug = "question-without-effect",
        Severity = Severity.Error,
        Summary = "A `?` asks for a fact by a result that doesn't rest on it.",
        Why = "No value of the fact can change the result, so there is nothing to find.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    pause ? for energy-left = 40 %
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    pause ? for stop-time = 40 min
            """),
        Fix = "Ask for a result that the fact has to do with; the message names some.",
        CanBeAllowed = false,
    };

    public override IEnumerable<Finding> Run(Study study, Answer answer)
    {
        if (answer.Sort != AnswerSort.NoEffect)
        {
            yield break;
        }

        var unknown = answer.Unknown;
        var why = answer.Subject is null
            ? $"`{unknown.Result.Name}` is a result of {ScopeWords.Of(unknown.Result.Scope)}, and seen from this line there is none."
            : $"`{unknown.Result.Name}` of {answer.Subject.Title} doesn't rest on `{unknown.Name}`, so no value of it can be found.";
        var instead = answer.Instead.IsEmpty ? "" : $" Resting on it: {string.Join(", ", answer.Instead.Select(name => $"`{name}`"))}.";
        yield return Report(unknown.Place, why + instead);
    }
}
