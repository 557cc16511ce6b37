using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>The trailer weighs more than is stamped on the ball or the coupling head.</summary>
public sealed class CouplingOverRating() : RatingCheck(RatingFamily.Ball)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL307",
        Slug = "coupling-over-rating",
        Severity = Severity.Error,
        Summary = "The trailer weighs more than is stamped on the ball or the coupling head.",
        Why = "Balls of one size come in several strengths. A ball that shears lets the trailer go.",
        Bad = RigExample.Bars.With(("    reach 10 in", "    ball-rating 5000 lb\n    reach 10 in")),
        Good = RigExample.Bars.With(("    reach 10 in", "    ball-rating 8000 lb\n    reach 10 in")),
        Fix = "Fit a ball or a coupling head of the same size that is rated for the trailer.",
    };

    public override ImmutableArray<Lever> Cures => Levers.Lightening;

    private protected override string Says(RatingLine line) => "The loaded trailer weighs";

    private protected override string Advice(RatingLine line) => "Fit one that is rated for it.";

    private protected override FactDeclaration At(RatingLine line) => NamingOwner(line);
}
