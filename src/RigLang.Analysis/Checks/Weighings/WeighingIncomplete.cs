using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>The passes do not say all that they could.</summary>
public sealed class WeighingIncomplete : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL804",
        Slug = "weighing-incomplete",
        Severity = Severity.Note,
        Summary = "The passes do not say all that they could.",
        Why = "Tongue load and restoration need the vehicle solo, coupled slack and, with bars, coupled tight, each with front and rear axle.",
        Bad = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                pass coupled
                    scale front 1210 kg
                    scale rear 1290 kg
                    scale trailer 1400 kg
            """),
        Good = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
                pass coupled
                    scale front 1210 kg
                    scale rear 1290 kg
                    scale trailer 1400 kg
            """),
        Fix = "Add the pass or reading that the message names, if you have it.",
    };

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        // A weighing of the trailer alone, or passes that say it all by other ways, want nothing.
        if (!weighing.Rig.HasTrailer || weighing.Passes.All(pass => pass.State == "trailer") || IsWhole(weighing))
        {
            yield break;
        }

        var coupled = weighing.Rig.IsDistributing ? "slack" : "coupled";
        string[] wanted = weighing.Rig.IsDistributing ? ["solo", "slack", "tight"] : ["solo", "coupled"];
        var missing = wanted.Where(state => (weighing.Pass(state) ?? (state == coupled ? weighing.Pass("slack") : null)) is not { } pass || !HasBothAxles(pass)).ToList();
        if (missing.Count > 0)
        {
            yield return Report(
                weighing.Parts.Weighing.Own.NamePlace,
                $"For tongue load{(weighing.Rig.IsDistributing ? " and restoration" : "")} by the scale, front and rear are wanted in {string.Join(" and ", missing.Select(state => $"`pass {state}`"))}.");
        }
    }

    private static bool IsWhole(WeighingStudy weighing) =>
        weighing.Compute(WeighingFitResults.Tongue, weighing).IsComputed
        && (!weighing.Rig.IsDistributing || (weighing.Compute(WeighingFitResults.Couple, weighing).IsComputed && weighing.Compute(WeighingResults.Restoration, weighing).IsComputed));

    private static bool HasBothAxles(PassSubject pass) => pass.Reading("front") is { IsOneWheel: false } && pass.Reading("rear") is { IsOneWheel: false };
}
