using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>A logged drive used clearly more or less than the model says.</summary>
public sealed class ModelOffRun : RunCheck
{
    /// <summary>Common practice: wind and traffic alone move a good log by some ten per cent.</summary>
    private const double Close = 0.10;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL811",
        Slug = "model-off-run",
        Severity = Severity.Warning,
        Summary = "A logged drive used clearly more or less than the model says.",
        Why = "The plan of the next trip rests on the same drag and rolling. Either the log is of another day's load and wind, or the rig's figures are off.",
        Bad = RunExample.Of("""
            run shakedown
                rig solo
                date 2026-09-12
                distance 100 km
                speed 90 km/h
                climb 0 m
                wind 0 km/h head
                used 30 kWh
            """),
        Good = RunExample.Of("""
            run shakedown
                rig solo
                date 2026-09-12
                distance 100 km
                speed 90 km/h
                climb 0 m
                wind 0 km/h head
                used 18 kWh
            """),
        Fix = "Write what the day was like (`load`, `wind`, `air`, `climb`), or mend the rig's `drag-area` and `rolling`.",
        Source = "common practice",
    };

    public override IEnumerable<Finding> Run(RunStudy run)
    {
        var gap = run.Compute(RunResults.Gap, run);
        if (gap.IsComputed && !Judgeable.IsUnsettled(run.Parts.Run, run.Rig.Parts) && Limits.Exceeds(Math.Abs(gap.Value), Close))
        {
            var share = QuantityWriter.Write(Math.Abs(gap.Value), QuantityKinds.Ratio, DisplaySystem.Metric);
            yield return Report(
                run.Block.Find(RunFacts.Used)?.Place ?? run.Parts.Run.Own.NamePlace,
                $"The drive used {share} {(gap.Value > 0 ? "more" : "less")} than the model says{Mark(gap)}. Was the day's load, wind, air and climb as written? Else `drag-area` or `rolling` of the rig is off.");
        }
    }
}
