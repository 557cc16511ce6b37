using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>The passes over the scale do not add up to the same total.</summary>
public sealed class TotalsDisagree : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL801",
        Slug = "weighing-totals-disagree",
        Severity = Severity.Warning,
        Summary = "The passes over the scale do not add up to the same total.",
        Why = "Coupling and setting bars only move weight from axle to axle; if the sum changes, a wheel stood off the platform, somebody got in or a number was copied wrong.",
        Bad = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 10 kg
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
                pass trailer
                    scale trailer 1400 kg
                    scale tongue 100 kg
                pass coupled
                    scale front 1210 kg
                    scale rear 1390 kg
                    scale trailer 1400 kg
            """),
        Good = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                scale-step 10 kg
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
        Fix = "Look at the slip again, or weigh again: same people, same tanks, whole axles on the platform.",
    };

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        var totals = Totals(weighing).ToList();
        if (totals.Count < 2)
        {
            yield break;
        }

        var first = totals[0];
        foreach (var other in totals.Skip(1).Where(other => Limits.Exceeds(Math.Abs(other.Total - first.Total), first.Doubt + other.Doubt)))
        {
            yield return Report(
                other.Place,
                $"The passes don't add up: {first.Words} comes to {Kilograms(first.Total, weighing)}, {other.Words} to {Kilograms(other.Total, weighing)}; the scale's steps explain {Kilograms(first.Doubt + other.Doubt, weighing)} at most. Look at the slip again, or weigh again.");
        }
    }

    /// <summary>The whole train by every way that the passes give it, kg.</summary>
    private static IEnumerable<(string Words, Place Place, double Total, double Doubt)> Totals(WeighingStudy weighing)
    {
        // With somebody out, or the hitch's head off, the sum is another.
        var passes = weighing.Passes.Where(pass => pass.Rig.Parts.Absent.IsEmpty).ToList();
        foreach (var pass in passes.Where(pass => pass.State is "slack" or "tight" or "coupled"))
        {
            if (Sum(pass, "front", "rear", "trailer") is { } sum)
            {
                yield return ($"`pass {pass.Block.Key}`", pass.Block.Opener!.Place, sum.Total, sum.Doubt);
            }
        }

        var solo = passes.FirstOrDefault(pass => pass.State == "solo");
        var trailer = passes.FirstOrDefault(pass => pass.State == "trailer");
        if (solo is not null && trailer is not null && !weighing.Rig.HasHitch && Sum(solo, "front", "rear") is { } alone && Sum(trailer, "trailer", "tongue") is { } towed)
        {
            yield return ("`pass solo` with `pass trailer`", trailer.Block.Opener!.Place, alone.Total + towed.Total, alone.Doubt + towed.Doubt);
        }
    }

    private static (double Total, double Doubt)? Sum(PassSubject pass, params string[] axles)
    {
        double total = 0, doubt = 0;
        foreach (var axle in axles)
        {
            if (pass.Reading(axle) is not { IsOneWheel: false } reading)
            {
                return null;
            }

            total += reading.Study.Compute(ReadingResults.Read, reading).Value;
            doubt += reading.Study.Compute(ReadingResults.Doubt, reading).Value;
        }

        return (total, doubt);
    }
}
