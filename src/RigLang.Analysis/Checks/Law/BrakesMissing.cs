using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Law;

/// <summary>A trailer without brakes has a gross rating above 750 kg.</summary>
public sealed class BrakesMissing() : LawCheck("de", "eu")
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL413",
        Slug = "brakes-missing",
        Severity = Severity.Warning,
        Summary = "A trailer without brakes has a gross rating above 750 kg.",
        Why = "European trailers of more than 750 kg gross are built with brakes. Either the papers or the line about the brakes is of another trailer, and how it stops depends on which.",
        Bad = RigExample.Ruled("eu").With(("brakes overrun", "brakes none"), ("towing-rating 2300 kg", "towing-rating 2300 kg\n    towing-rating-unbraked 2000 kg")),
        Good = RigExample.Ruled("eu"),
        Fix = "Check `brakes` and the gross mass on the trailer's papers.",
        Source = "UN R13: category O1 ends at 750 kg, value from memory",
    };

    /// <summary>Where category O2 begins, kg.</summary>
    private const double BrakedAbove = 750;

    private protected override IEnumerable<Finding> Judge(RigStudy rig, string rules)
    {
        if (rig.HasTrailer && Word(rig.Trailer, TrailerFacts.Brakes) == "none" && Written(rig.Trailer, TrailerFacts.GrossRating) is { } gross && Limits.Exceeds(gross.Value, BrakedAbove))
        {
            yield return Report(
                rig, RigFacts.Trailer,
                $"The trailer's `gross-rating` is {gross.Text} and it has no brakes: above {QuantityWriter.WriteLike(BrakedAbove, gross)} European trailers have them (UN R13, category O2, value from memory). Check both against its papers.")
                with { Related = [.. new[] { TrailerFacts.Brakes, TrailerFacts.GrossRating }.Select(rig.Trailer.Find).OfType<Fact>().Select(line => new Related(line.Place, $"`{line.Declaration.Keyword}`"))] };
        }
    }
}
