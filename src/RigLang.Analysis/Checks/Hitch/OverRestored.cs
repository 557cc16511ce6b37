using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>The bars put more on the front axle than it carries solo.</summary>
public sealed class OverRestored : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL411",
        Slug = "over-restored",
        Severity = Severity.Warning,
        Summary = "The bars put more on the front axle than it carries solo.",
        Why = "What goes to the front comes off the rear axle, whose tyres hold the vehicle's tail in line. Above 100 % the rig steers heavily and swings sooner.",
        Bad = RigExample.Bars.With(("restoration 50 %", "restoration 120 %")),
        Good = RigExample.Bars,
        Fix = "Slacken the bars: fewer links, less tilt of the head.",
        Source = "common practice: makers ask for 0 to 100 % (value from memory)",
    };

    public override ImmutableArray<Lever> Cures => [Levers.SetBars];

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (rig.Compute(HitchResults.RestoredShare, rig) is { IsComputed: true } share && Limits.Exceeds(share.Value, 1))
        {
            yield return Report(
                rig, BarSetting.Lines(rig) is [var line, ..] ? line : null,
                $"The bars bring back {QuantityWriter.Write(share.Value, QuantityKinds.Ratio, DisplaySystem.Metric)}{Mark(share)} of the front axle's lost load: more than it carries solo. Slacken them until it is at most 100 %.");
        }
    }

    public override string? Figure(Study study, Finding finding) =>
        study is RigStudy rig && rig.Compute(HitchResults.RestoredShare, rig) is { IsComputed: true } share
            ? $"brings back {QuantityWriter.Write(share.Value, QuantityKinds.Ratio, DisplaySystem.Metric)}"
            : null;
}
