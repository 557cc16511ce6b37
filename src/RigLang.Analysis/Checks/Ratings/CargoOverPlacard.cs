using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>People, cargo and tongue load are more than the placard allows.</summary>
public sealed class CargoOverPlacard() : RatingCheck(RatingFamily.Cargo)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL308",
        Slug = "cargo-over-placard",
        Severity = Severity.Error,
        Summary = "People, cargo and tongue load are more than the placard allows.",
        Why = "The placard on the door pillar counts everybody and everything that came aboard since the factory, the hitch and the tongue load included. It runs out long before the towing rating does.",
        Bad = RigExample.Pair.With(("    gross-rating 2950 kg", "    gross-rating 2950 kg\n    cargo-rating 200 kg")),
        Good = RigExample.Pair.With(("    gross-rating 2950 kg", "    gross-rating 2950 kg\n    cargo-rating 400 kg")),
        Fix = "Leave cargo behind, or carry it in the trailer without making the tongue heavier.",
        Source = "vehicle capacity weight, 49 CFR 571.110 S3 and S9.3.4(e)",
    };

    public override ImmutableArray<Lever> Cures => Levers.Lightening;

    private protected override string Says(RatingLine line) => line.Rating.Owner.Declaration.Kind == DeclarationKind.Vehicle ? "People, cargo, hitch and tongue load come to" : "The trailer's cargo comes to";

    private protected override string Advice(RatingLine line) => "Leave something behind.";

    private protected override FactDeclaration At(RatingLine line) => RigFacts.Load;
}
