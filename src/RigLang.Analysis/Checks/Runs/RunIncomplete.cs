using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>A logged drive lacks something that the comparison needs.</summary>
public sealed class RunIncomplete : RunCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL812",
        Slug = "run-incomplete",
        Severity = Severity.Note,
        Summary = "A logged drive lacks something that the comparison with the model needs.",
        Why = "A log without its climb or its consumption proves nothing of the next trip.",
        Bad = RunExample.Of("""
            run shakedown
                rig solo
                date 2026-09-12
                distance 100 km
                speed 90 km/h
                used 18 kWh
            """),
        Good = RunExample.Of("""
            run shakedown
                rig solo
                date 2026-09-12
                distance 100 km
                speed 90 km/h
                climb 0 m
                used 18 kWh
            """),
        Fix = "Write the line that the message names; `climb 0 m` says a level road.",
    };

    public override IEnumerable<Finding> Run(RunStudy run)
    {
        if (!Judgeable.IsUnsettled(run.Parts.Run, run.Rig.Parts) && run.Compute(RunResults.Gap, run) is { Applies: true, Missing: { } missing })
        {
            yield return Report(run.Parts.Run.Own.NamePlace, $"To hold the drive against the model, {missing.Words} is wanted.");
        }
    }
}
