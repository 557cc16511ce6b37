using RigLang.Analysis.Results;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>An `expect` or `limit` line is about a result that is never judged there.</summary>
public sealed class NeverJudged : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL906",
        Slug = "never-judged",
        Severity = Severity.Error,
        Summary = "An `expect` or `limit` line is about a result that is never judged there.",
        Why = "An expectation that nobody looks at is worse than none: it seems to be met.",
        Bad = """
            vehicle van
                wheelbase 3 m
                axle front
                    carries 1000 kg
                axle rear
                    carries 900 kg
                aboard nothing

            rig solo
                vehicle van
                expect energy-left > 20 %
            """,
        Good = """
            vehicle van
                wheelbase 3 m
                axle front
                    carries 1000 kg
                axle rear
                    carries 900 kg
                aboard nothing

            rig solo
                vehicle van
                expect front-axle-load < 1100 kg
            """,
        Fix = "Write it where that result belongs: in the rig, in the trip, in a leg or stop, or in the weighing.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        var demands = from block in declaration.Block.WithInner()
                      from line in block.All(EverywhereFacts.Expect).Concat(block.All(PracticeFacts.Limit))
                      where line.Place.Declaration == declaration.Own.Syntax
                      select (Block: block, Line: line);
        foreach (var (block, line) in demands)
        {
            if (Catalogue.FindResult(line.WordOf("result") ?? "") is { } result && !Judged(block, line).Contains(result.Scope))
            {
                yield return Report(line.PlaceOf("result"), $"`{result.Name}` is {Home(result.Scope)}, and isn't judged here. Write the line there.");
            }
        }
    }

    private static ResultScope[] Judged(Block block, Fact line) => (block.Declaration.Kind, block.Declaration.Keyword) switch
    {
        _ when line.Declaration == PracticeFacts.Limit => [ResultScope.Rig, ResultScope.Axle, ResultScope.Trip, ResultScope.Leg, ResultScope.Stop],
        (DeclarationKind.Rig, _) => [ResultScope.Rig],
        (DeclarationKind.Trip, "stop") => [ResultScope.Stop, ResultScope.Leg, ResultScope.Trip, ResultScope.Rig],
        (DeclarationKind.Trip, _) => [ResultScope.Leg, ResultScope.Trip, ResultScope.Rig],
        (DeclarationKind.Weighing, "weighing") => [ResultScope.Weighing],
        _ => [],
    };

    private static string Home(ResultScope scope) => scope switch
    {
        ResultScope.Rig => "a result of a rig",
        ResultScope.Axle => "a result of each axle, which a practice can limit",
        ResultScope.Trip => "a result of a trip",
        ResultScope.Leg => "a result of a trip's leg",
        ResultScope.Stop => "a result of a trip's stop",
        ResultScope.Weighing => "a result of a weighing",
        ResultScope.Reading => "a result of each reading of a scale",
        ResultScope.RunSet => "a result of all runs of a rig together, and nobody's aim",
        _ => "a result of a run",
    };
}
