using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>The trailer weighs more than the vehicle or the hitch may tow.</summary>
public sealed class TrailerOverTowingRating() : RatingCheck(RatingFamily.Towing)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL305",
        Slug = "trailer-over-towing-rating",
        Severity = Severity.Error,
        Summary = "The trailer weighs more than the vehicle or the hitch may tow.",
        Why = "The weakest of vehicle and hitch decides. A trailer without brakes, or one pulled without weight distribution, has a lower rating of its own.",
        Bad = RigExample.Pair.With(("towing-rating 2300 kg", "towing-rating 1500 kg")),
        Good = RigExample.Pair,
        Fix = "Leave load behind, or tow it with something stronger.",
    };

    public override ImmutableArray<Lever> Cures => Levers.Lightening;

    private protected override string Says(RatingLine line) => "The loaded trailer weighs";

    private protected override string Advice(RatingLine line) => "Leave something behind, or use what is rated for it.";

    private protected override FactDeclaration At(RatingLine line) => line.Rating.Owner.Declaration.Kind == DeclarationKind.Hitch ? RigFacts.Hitch : RigFacts.Trailer;
}
