using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>Front and rear axle give clearly different tongue loads.</summary>
public sealed class TongueWaysDisagree : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL803",
        Slug = "tongue-ways-disagree",
        Severity = Severity.Warning,
        Summary = "Front and rear axle give clearly different tongue loads.",
        Why = "Both follow from the same coupling; when they disagree, a reading, the wheelbase or the overhang is wrong, or the front wheels were not on the platform alone.",
        Bad = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 5 kg
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
                pass coupled
                    scale front 1170 kg
                    scale rear 1330 kg
                    scale trailer 1400 kg
            """),
        Good = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 5 kg
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
                pass coupled
                    scale front 1210 kg
                    scale rear 1290 kg
                    scale trailer 1400 kg
            """),
        Fix = "Check wheelbase and overhang with the tape, and the readings with the slip.",
    };

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        var front = weighing.Compute(WeighingResults.TongueByFront, weighing);
        var rear = weighing.Compute(WeighingResults.TongueByRear, weighing);
        var doubt = weighing.Compute(WeighingResults.TongueDoubt, weighing);
        if (!Judgeable.IsUnsettled(weighing.Parts.Weighing, weighing.Rig.Parts) && front.IsComputed && rear.IsComputed && doubt.IsComputed && Limits.Exceeds(Math.Abs(front.Value - rear.Value), doubt.Value))
        {
            var pass = weighing.Pass("slack") ?? weighing.Pass("coupled")!;
            yield return Report(
                pass.Block.Opener!.Place,
                $"The front axle says {Kilograms(front.Value, weighing)} on the tongue, the rear axle {Kilograms(rear.Value, weighing)}; the scale's steps explain {Kilograms(doubt.Value, weighing)} between them. Check the readings, the wheelbase and the overhang.");
        }
    }
}
