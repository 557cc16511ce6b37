using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>No value in the range gives the wished result.</summary>
public sealed class QuestionOutOfReach : QuestionCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL912",
        Slug = "question-out-of-reach",
        Severity = Severity.Warning,
        Summary = "No value within the range gives what a `?` wishes for.",
        Why = "The wish can't be had this way. The message says how near it comes, with which value, and what binds there; until the line is changed the fact counts as not known.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    speed ? for energy-left = 80 % within 60 km/h .. 100 km/h
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    speed ? for energy-left = 55 % within 60 km/h .. 100 km/h
                    climb 0 m
            """),
        Fix = "Wish for less, look in a wider range, or change something else: the start, a stop, the load.",
    };

    public override IEnumerable<Finding> Run(Study study, Answer answer)
    {
        if (answer.Sort != AnswerSort.OutOfReach)
        {
            yield break;
        }

        var unknown = answer.Unknown;
        var (nearest, reached) = (AnswerWords.Value(unknown, answer.Value), AnswerWords.Result(answer, answer.Reached));
        var message = $"No `{unknown.Name}` {AnswerWords.Range(answer)} was found that gives `{unknown.Wish}`. The nearest is {reached}, with {nearest}: {AnswerWords.Binds(answer)}.";
        yield return Report(unknown.Place, message) with { Fixes = [new Fix($"Write {nearest}, which comes nearest ({unknown.Result.Name} {reached})", unknown.Place, nearest)] };
    }
}
