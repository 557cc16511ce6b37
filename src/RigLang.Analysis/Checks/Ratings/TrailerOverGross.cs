using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>The loaded trailer weighs more than its gross rating.</summary>
public sealed class TrailerOverGross() : RatingCheck(RatingFamily.TrailerGross)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL304",
        Slug = "trailer-over-gross",
        Severity = Severity.Error,
        Summary = "The loaded trailer weighs more than its gross rating.",
        Why = "Its frame, axles and brakes end there, and full water tanks are often what was forgotten.",
        Bad = RigExample.Pair.With(("gross-rating 2000 kg", "gross-rating 1550 kg")),
        Good = RigExample.Pair,
        Fix = "Leave load behind, travel with empty tanks, or carry some of it in the vehicle.",
        Source = "GVWR of the trailer, 49 CFR 571.3(b)",
    };

    public override ImmutableArray<Lever> Cures => Levers.Lightening;

    private protected override string Says(RatingLine line) => "The loaded trailer weighs";

    private protected override string Advice(RatingLine line) => "Leave something behind, or empty a tank.";

    private protected override FactDeclaration At(RatingLine line) => RigFacts.Trailer;
}
