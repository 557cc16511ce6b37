using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>Front and rear axle give clearly different couples of the bars.</summary>
public sealed class CoupleWaysDisagree : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL809",
        Slug = "couple-ways-disagree",
        Severity = Severity.Warning,
        Summary = "Front and rear axle give clearly different couples of the bars.",
        Why = "What the set bars bring back to the front axle and what they take off the rear one follow from one couple; when they disagree, something else moved between the two passes, a reading is wrong, or a length is.",
        Bad = WeighingExample.WithBars("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 5 kg
                pass slack
                    scale front 1170 kg
                    scale rear 1430 kg
                    scale trailer 1300 kg
                pass tight
                    scale front 1210 kg
                    scale rear 1410 kg
                    scale trailer 1280 kg
            """),
        Good = WeighingExample.WithBars("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 5 kg
                pass slack
                    scale front 1170 kg
                    scale rear 1430 kg
                    scale trailer 1300 kg
                pass tight
                    scale front 1210 kg
                    scale rear 1370 kg
                    scale trailer 1320 kg
            """),
        Fix = "Weigh slack and tight again, one right after the other, nobody getting in or out; check coupling-to-axle and overhang with the tape.",
    };

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        var front = weighing.Compute(WeighingResults.CoupleByFront, weighing);
        var rear = weighing.Compute(WeighingResults.CoupleByRear, weighing);
        var doubt = weighing.Compute(WeighingResults.CoupleDoubt, weighing);
        if (!Judgeable.IsInError(weighing.Rig.Parts) && front.IsComputed && rear.IsComputed && doubt.IsComputed && Limits.Exceeds(Math.Abs(front.Value - rear.Value), doubt.Value))
        {
            string Torque(double couple) => QuantityWriter.Write(couple, QuantityKinds.Torque, DisplaySystem.Metric);
            yield return Report(
                weighing.Pass("tight")!.Block.Opener!.Place,
                $"The front axle says {Torque(front.Value)} of the bars, the rear axle {Torque(rear.Value)}; the scale's steps explain {Torque(doubt.Value)} between them. Check the readings of both passes, and the lengths.");
        }
    }
}
