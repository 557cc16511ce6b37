using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>What lies on the roof is more than it may bear.</summary>
public sealed class RoofOverRating() : RatingCheck(RatingFamily.Roof)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL309",
        Slug = "roof-over-rating",
        Severity = Severity.Error,
        Summary = "What lies on the roof is more than it may bear.",
        Why = "Rack and box count too. The rating is for the worst moment in a bend, and mass up there makes a rig roll.",
        Bad = RigExample.Pair.With(("    gross-rating 2950 kg", "    gross-rating 2950 kg\n    roof-rating 75 kg"), ("        item people", "        item box 20 kg + 70 kg at 1.50 m behind front-axle on roof\n        item people")),
        Good = RigExample.Pair.With(("    gross-rating 2950 kg", "    gross-rating 2950 kg\n    roof-rating 75 kg"), ("        item people", "        item box 20 kg + 40 kg at 1.50 m behind front-axle on roof\n        item people")),
        Fix = "Take things down from the roof.",
    };

    public override ImmutableArray<Lever> Cures => Levers.Lightening;

    private protected override string Says(RatingLine line) => "On the roof lie";

    private protected override string Advice(RatingLine line) => "Take things down and stow them low.";

    private protected override FactDeclaration At(RatingLine line) => RigFacts.Load;
}
