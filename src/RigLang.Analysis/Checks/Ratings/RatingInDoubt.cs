using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Doubts;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>A rating holds, but what is known isn't sure enough to say so.</summary>
public sealed class RatingInDoubt : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL324",
        Slug = "rating-in-doubt",
        Severity = Severity.Warning,
        Summary = "A rating holds by the values as written, but with what is uncertain of them it may well be passed.",
        Why = "A load is as sure as what it was made from. Where the chance of passing a rating is more than one in twenty, a weighing settles it.",
        Bad = RigExample.Pair.With(("carries 1150 kg", "carries 1150 kg ± 60 kg"), ("axle-rating 1700 kg", "axle-rating 1400 kg")),
        Good = RigExample.Pair.With(("carries 1150 kg", "carries 1150 kg ± 10 kg")),
        Fix = "Weigh what is most in doubt, or keep more room.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        foreach (var line in RatingTable.Of(rig).Where(line => line is { IsKnown: true, IsOver: false }))
        {
            if (DoubtTable.Of(line.Rating.Load, line.Rating.Subject) is not { HalfWidth: > 0, Parts: [var most, ..] } doubt
                || doubt.ChanceAbove(line.Limit!.Value) is not (> ChanceWords.WorthSaying and var chance))
            {
                continue;
            }

            var half = QuantityWriter.WriteLike(doubt.HalfWidth, line.Limit);
            var load = QuantityWriter.WriteAgainst(line.Load.Value, line.Limit);
            yield return Report(
                rig, RatingCheck.NamingOwner(line),
                $"{line.Rating.Title}: {load} ± {half} of {QuantityWriter.WriteLike(line.Limit.Value, line.Limit)}; the chance that it is over is {ChanceWords.Percent(chance)}. "
                + $"Most of the doubt is {most.Fact.Fact.Words}: measure it better, or keep more room.")
                with { Related = line.LimitLine is { } limit ? [new Related(limit.Place, "the rating")] : [] };
        }
    }
}
