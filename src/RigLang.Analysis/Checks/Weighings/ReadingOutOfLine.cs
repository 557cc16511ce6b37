using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>One reading doesn't belong to the others, which agree among themselves.</summary>
public sealed class ReadingOutOfLine : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL808",
        Slug = "reading-out-of-line",
        Severity = Severity.Warning,
        Summary = "One reading doesn't belong to the others, which agree among themselves.",
        Why = "With more readings than unknowns each is told by the others too. Where leaving out a single one makes all others fit within the scale's steps, that one was misread, or copied wrong.",
        Bad = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 5 kg
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
                pass trailer
                    scale trailer 1400 kg
                    scale tongue 150 kg
                pass coupled
                    scale front 1210 kg
                    scale rear 1290 kg
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
                pass trailer
                    scale trailer 1400 kg
                    scale tongue 100 kg
                pass coupled
                    scale front 1210 kg
                    scale rear 1290 kg
                    scale trailer 1400 kg
            """),
        Fix = "Look at the slip for that reading; if the slip says the same, weigh that axle again.",
    };

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        if (Judgeable.IsInError(weighing.Rig.Parts) || weighing.Compute(WeighingFit.Of, weighing) is not { Missing: null, Applies: true, Value: { OutOfLine: { } group } fit })
        {
            yield break;
        }

        var said = group.Readings.Sum(reading => weighing.Compute(ReadingResults.Read, reading).Value);
        yield return Report(
            group.Readings[0].Lines[0].Place,
            $"All other readings agree with each other, and make this {Kilograms(said - (fit.OffOthers / Constants.Gravity), weighing)} instead of {Kilograms(said, weighing)}. Look at the slip again, or weigh {group.Readings[0].Axles} again.");
    }
}
