using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>The scale shows more on an axle than its rating.</summary>
public sealed class WeighedOverRating : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL805",
        Slug = "weighed-over-rating",
        Severity = Severity.Error,
        Summary = "The scale shows more on an axle than its rating.",
        Why = "This is no model any more: the rig stood there overloaded.",
        Bad = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                pass coupled
                    scale front 1210 kg
                    scale rear 1790 kg
            """),
        Good = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                pass coupled
                    scale front 1210 kg
                    scale rear 1290 kg
            """),
        Fix = "Move or leave behind load, or change the hitch set-up, and weigh again before driving on.",
    };

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        foreach (var reading in weighing.Passes.SelectMany(pass => pass.Readings).Where(reading => !reading.IsOneWheel))
        {
            var axles = reading.Axles == "trailer" ? [.. reading.Pass.Rig.TrailerAxles] : reading.Pass.Rig.Axles.Where(axle => reading.Axles.Split(' ').Contains(axle.Axle.Key)).ToList();
            var ratings = axles.Select(axle => axle.Axle.Find(axle.Facts.AxleRating)).ToList();
            if (ratings.Count == 0 || ratings.Contains(null) || ratings.Any(rating => rating!.MeasureOf(Signature.ValueRole) is null))
            {
                continue;
            }

            var limit = axles.Sum(axle => axle.Rig.Line(axle.Axle, axle.Facts.AxleRating)!.MeasureOf(Signature.ValueRole)!.Value * CountOf(axle));
            var read = reading.Study.Compute(ReadingResults.Read, reading).Value;
            if (Limits.Exceeds(read, limit))
            {
                yield return Report(
                    reading.Lines[0].Place,
                    $"The scale shows {Kilograms(read, weighing)} on {reading.Axles}, {Kilograms(read - limit, weighing)} over the rating of {Kilograms(limit, weighing)}. Take load off before driving on.")
                    with { Related = [.. ratings.Select(rating => new Related(rating!.Place, "the rating")) ] };
            }
        }
    }

    private static double CountOf(AxleSubject axle) =>
        axle.Facts.EqualAxles is { } count && axle.Axle.Find(count)?.MeasureOf(Signature.ValueRole) is { } several ? several.Value : 1;
}
