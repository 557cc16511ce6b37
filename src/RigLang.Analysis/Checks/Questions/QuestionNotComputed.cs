using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>The result that a question asks for can't be computed.</summary>
public sealed class QuestionNotComputed : QuestionCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL915",
        Slug = "question-not-computed",
        Severity = Severity.Warning,
        Summary = "The result that a `?` asks for can't be computed with any value.",
        Why = "Something else is missing first.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                leg coast
                    distance 190 km
                    speed ? for energy-left = 55 %
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    speed ? for energy-left = 55 %
                    climb 0 m
            """),
        Fix = "Write the line that is missing.",
    };

    public override IEnumerable<Finding> Run(Study study, Answer answer)
    {
        if (answer.Sort == AnswerSort.NotComputed)
        {
            var why = answer.Missing is { } missing ? $"it needs {missing.Words}" : answer.Why.Length > 0 ? answer.Why : $"with no value {AnswerWords.Range(answer)} a number comes out";
            yield return Report(answer.Unknown.Place, $"`{answer.Unknown.Result.Name}`{AnswerWords.Where(answer)} isn't computed, so `{answer.Unknown.Name}` can't be found: {why}.");
        }
    }
}
