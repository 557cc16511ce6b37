using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>The scale says clearly something else than the model.</summary>
public sealed class ScaleOffModel : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL802",
        Slug = "scale-off-model",
        Severity = Severity.Warning,
        Summary = "The scale says clearly something else than the model.",
        Why = "The real rig is right. Either something is aboard that no load names, or a fact of the rig is wrong; every other result rests on the same facts.",
        Bad = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 10 kg
                pass solo
                    scale front 1250 kg
                    scale rear 1290 kg
            """),
        Good = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 10 kg
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
            """),
        Fix = "List in the load what was aboard that day (`load` and `absent` lines in the weighing), or write the weighed figures into vehicle and trailer.",
        Source = "common practice",
    };

    /// <summary>Common practice: within 3 % the model is as good as lengths and places by tape can make it.</summary>
    private const double Close = 0.03;

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        if (Judgeable.IsUnsettled(weighing.Parts.Weighing, weighing.Rig.Parts))
        {
            yield break;
        }

        foreach (var reading in weighing.Passes.SelectMany(pass => pass.Readings))
        {
            var gap = reading.Study.Compute(ReadingResults.Gap, reading);
            var model = reading.Study.Compute(ReadingResults.Model, reading);
            var doubt = reading.Study.Compute(ReadingResults.Doubt, reading).Value;
            if (!gap.IsComputed || !Limits.Exceeds(Math.Abs(gap.Value), Math.Max(2 * doubt, Close * model.Value)))
            {
                continue;
            }

            var more = gap.Value > 0 ? "more" : "less";
            yield return Report(
                reading.Lines[0].Place,
                $"The scale shows {Kilograms(Math.Abs(gap.Value), weighing)} {more} on {reading.Axles} than the model ({Kilograms(model.Value, weighing)}{(model.IsEstimated ? ", estimated" : "")}). Was something aboard that no load names? Else a fact of the rig is off.");
        }
    }
}
