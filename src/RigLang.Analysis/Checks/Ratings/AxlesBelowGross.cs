using RigLang.Analysis.Checks.Examples;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>The trailer's axle ratings and tongue together are less than its gross rating.</summary>
public sealed class AxlesBelowGross : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL318",
        Slug = "axles-below-gross",
        Severity = Severity.Note,
        Summary = "The trailer's axle ratings and tongue together are less than its gross rating.",
        Why = "Loaded to its gross rating, the trailer would be over its axles: the axle ratings end first, and the gross rating promises more than there is.",
        Bad = RigExample.Pair.With(("axle-rating 1900 kg", "axle-rating 1700 kg")),
        Good = RigExample.Pair,
        Fix = "Check both figures on the plate. If they are so, load by the axles and not by the gross rating.",
        Source = "49 CFR 571.110 S9.2, for recreation trailers",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        if (declaration.Kind != DeclarationKind.Trailer || declaration.Block.Find(TrailerFacts.GrossRating) is not { } line || line.MeasureOf(Signature.ValueRole) is not { } gross
            || declaration.Block.Find(TrailerFacts.Tongue)?.MeasureOf(Signature.ValueRole) is not { } tongue)
        {
            yield break;
        }

        var axles = declaration.Block.AllBlocks(AxleFacts.Trailer.Block);
        var ratings = axles.Sum(axle => Value(axle, AxleFacts.Trailer.AxleRating) * Value(axle, AxleFacts.Trailer.EqualAxles!));
        if (axles.IsEmpty || !(UsRatings.RecreationTrailerSurplus(ratings, tongue.Value, gross.Value) < 0) || Limits.Same(ratings + tongue.Value, gross.Value))
        {
            yield break;
        }

        var place = line.Place.Declaration == declaration.Own.Syntax ? line.Place : declaration.Own.NamePlace;
        yield return Report(
            place,
            $"The axles may carry {QuantityWriter.WriteLike(ratings, gross)} and the tongue takes {QuantityWriter.WriteLike(tongue.Value, gross)}: less than the `gross-rating` of {QuantityWriter.WriteLike(gross.Value, gross)}. Load by the axles.")
            with { Related = [.. axles.Select(axle => axle.Find(AxleFacts.Trailer.AxleRating)).OfType<Fact>().Select(rating => new Related(rating.Place, "an axle's rating"))] };
    }

    /// <summary>NaN where it isn't written and nothing is its default.</summary>
    private static double Value(Block axle, FactDeclaration fact) =>
        axle.Find(fact)?.MeasureOf(Signature.ValueRole)?.Value ?? (fact == AxleFacts.Trailer.EqualAxles ? 1 : double.NaN);
}
