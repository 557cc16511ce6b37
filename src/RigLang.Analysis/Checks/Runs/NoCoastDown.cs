using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>The <c>coast</c> lines are no coast-down, or lack something to be read as one.</summary>
public sealed class NoCoastDown : RunCheck
{
    private const string Head = """
        run roll
            rig solo
            date 2026-09-12
            climb 0 m
            wind 0 km/h head
            air 15 °C

        """;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL817",
        Slug = "no-coast-down",
        Severity = Severity.Warning,
        Summary = "The `coast` lines are no coast-down, or lack something to be read as one.",
        Why = "Rolling out in neutral a rig slows all the time, and more the faster it goes. A table that doesn't was mistyped, or the road, the wind or the brakes had a hand in it.",
        Bad = RunExample.Of(Head + """
                coast 0 s 28.0 m/s
                coast 10 s 29.5 m/s
                coast 20 s 27.0 m/s
            """),
        Good = RunExample.Of(Head + """
                coast 0 s 28.0 m/s
                coast 10 s 26.0 m/s
                coast 20 s 24.2 m/s
                coast 30 s 22.57 m/s
                coast 40 s 21.1 m/s
            """),
        Fix = "Compare the lines with the log; write `climb 0 m` for a level road, `wind` and `air` as they were.",
    };

    public override IEnumerable<Finding> Run(RunStudy run)
    {
        if (run.Compute(Coasting.Reading, run) is not { Applies: true } reading || run.Block.All(RunFacts.Coast) is not [var first, ..])
        {
            yield break;
        }

        if (reading.Missing is { } missing)
        {
            yield return Report(first.Place, $"To read the coast-down, {missing.Words} is wanted.");
        }
        else if (reading.Refusal is { } why)
        {
            yield return Report(first.Place, $"Nothing is fitted: {why}.");
        }
    }
}
