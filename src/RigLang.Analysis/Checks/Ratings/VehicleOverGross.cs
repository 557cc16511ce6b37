using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>The vehicle weighs more on its own wheels than its gross rating.</summary>
public sealed class VehicleOverGross() : RatingCheck(RatingFamily.Gross)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL302",
        Slug = "vehicle-over-gross",
        Severity = Severity.Error,
        Summary = "The vehicle weighs more on its own wheels than its gross rating.",
        Why = "People, cargo, the hitch and the part of the trailer that it carries all count. Brakes and frame are proven up to that figure and no further.",
        Bad = RigExample.Pair.With(("gross-rating 2950 kg", "gross-rating 2600 kg")),
        Good = RigExample.Pair,
        Fix = "Move load from the vehicle into the trailer behind its axle, or leave some behind.",
        Source = "GVWR, 49 CFR 571.3(b)",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    private protected override string Says(RatingLine line) => "The vehicle stands on its wheels with";

    private protected override string Advice(RatingLine line) => "Leave something behind, or carry it in the trailer without making the tongue heavier.";

    private protected override FactDeclaration At(RatingLine line) => RigFacts.Vehicle;
}
