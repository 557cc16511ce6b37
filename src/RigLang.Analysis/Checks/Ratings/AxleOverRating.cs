using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>An axle carries more than its rating.</summary>
public sealed class AxleOverRating() : RatingCheck(RatingFamily.Axle)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL301",
        Slug = "axle-over-rating",
        Severity = Severity.Error,
        Summary = "An axle carries more than its rating.",
        Why = "Bearings, springs, brakes and tyres were chosen for that figure. The rear axle of the tow vehicle is usually the first to pass it, since the tongue load works on it with a lever.",
        Bad = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1300 kg")),
        Good = RigExample.Pair,
        Fix = "Move load away from that axle or leave some behind; with spring bars, set more restoration.",
        Source = "GAWR, 49 CFR 571.3(b)",
    };

    public override ImmutableArray<Lever> Cures => [Levers.SetBars, .. Levers.Loading];

    private protected override string Says(RatingLine line) => $"{line.Rating.Title} carries";

    private protected override string Advice(RatingLine line) => line.Rating.Subject is AxleSubject { IsTrailer: false, Axle.Key: "rear" }
        ? "Move load ahead of the rear axle, take some of the tongue load off, or leave something behind."
        : "Move load to other axles or leave some behind.";

    private protected override FactDeclaration At(RatingLine line) => NamingOwner(line);
}
