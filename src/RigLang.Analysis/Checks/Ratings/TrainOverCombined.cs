using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>Vehicle and trailer together weigh more than the combined rating.</summary>
public sealed class TrainOverCombined() : RatingCheck(RatingFamily.Combined)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL303",
        Slug = "train-over-combined",
        Severity = Severity.Error,
        Summary = "Vehicle and trailer together weigh more than the combined rating.",
        Why = "Engine, gearbox, cooling and brakes of the tow vehicle are rated for the whole train. A vehicle and a trailer that are each within their own ratings may still be too much together.",
        Bad = RigExample.Pair.With(("combined-rating 5000 kg", "combined-rating 4000 kg")),
        Good = RigExample.Pair,
        Fix = "Leave load behind, wherever it is; moving it changes nothing.",
        Source = "GCWR, 49 CFR 571.3(b)",
    };

    public override ImmutableArray<Lever> Cures => Levers.Lightening;

    private protected override string Says(RatingLine line) => "Vehicle and trailer weigh";

    private protected override string Advice(RatingLine line) => "Only what stays at home helps: moving load changes nothing.";

    private protected override FactDeclaration At(RatingLine line) => RigFacts.Trailer;
}
