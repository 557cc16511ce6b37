using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Checks.Ratings;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>The tongue load is more than the spring bars are made for.</summary>
public sealed class BarsTooLight() : RatingCheck(RatingFamily.Bars)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL410",
        Slug = "bars-too-light",
        Severity = Severity.Warning,
        Summary = "The tongue load is more than the spring bars are made for.",
        Why = "Bars that are too light bend until they are straight and then hold nothing: the set-up is gone where the road dips.",
        Bad = RigExample.Bars.With(("    reach 10 in", "    bar-rating 600 lb\n    reach 10 in")),
        Good = RigExample.Bars.With(("    reach 10 in", "    bar-rating 800 lb\n    reach 10 in")),
        Fix = "Fit bars of the next size: their rating should be at or above the tongue load.",
        Source = "common practice: bars rated at or above the tongue load",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    private protected override string Says(RatingLine line) => "The tongue load is";

    private protected override string Advice(RatingLine line) => "Fit the next stronger pair.";

    private protected override FactDeclaration At(RatingLine line) => RigFacts.Hitch;
}
