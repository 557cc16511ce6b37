using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>The post's meter said less than the battery gave.</summary>
public sealed class WallBelowUse : RunCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL813",
        Slug = "wall-below-use",
        Severity = Severity.Error,
        Summary = "The meter at the post said less than the battery gave.",
        Why = "Charging loses energy and never makes any: one of the two figures was copied wrong, or the battery wasn't filled up again.",
        Bad = RunExample.Of("""
            run shakedown
                rig solo
                date 2026-09-12
                distance 100 km
                speed 90 km/h
                climb 0 m
                used 18 kWh
                used-wall 16 kWh
            """),
        Good = RunExample.Of("""
            run shakedown
                rig solo
                date 2026-09-12
                distance 100 km
                speed 90 km/h
                climb 0 m
                used 18 kWh
                used-wall 20 kWh
            """),
        Fix = "Check both figures; leave `used-wall` out if the battery wasn't charged back to where the drive began.",
    };

    public override IEnumerable<Finding> Run(RunStudy run)
    {
        var share = run.Compute(RunResults.WallShare, run);
        if (share.IsComputed && Limits.Exceeds(share.Value, 1))
        {
            yield return Report(
                run.Block.Find(RunFacts.UsedWall)!.Place,
                $"The post gave {QuantityWriter.Write(1 / share.Value, QuantityKinds.Ratio, DisplaySystem.Metric)} of what the battery used; charging can't give more than it takes. Check both figures.");
        }
    }
}
