using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Checks.Ratings;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>A D-value on a plate is less than vehicle and trailer need by their papers.</summary>
public sealed class DValueTooSmall() : RatingCheck(RatingFamily.DValue)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL402",
        Slug = "d-value-too-small",
        Severity = Severity.Error,
        Summary = "A D-value on a plate is less than vehicle and trailer need by their papers.",
        Why = "The D-value is the pull to and fro between the two that a coupling is proven for. It goes by what the papers permit, not by what is loaded today.",
        Bad = RigExample.Pair.With(("    tongue-rating 230 kg", "    tongue-rating 230 kg\n    d-value 10 kN")),
        Good = RigExample.Pair.With(("    tongue-rating 230 kg", "    tongue-rating 230 kg\n    d-value 13 kN")),
        Fix = "Fit a ball, bracket or coupling head with a higher D-value; a lower gross rating of the trailer on its papers helps too.",
        Source = "D = 9.81 × T × R ÷ (T + R), after UN R55, value from memory",
    };

    private protected override string Says(RatingLine line) => "Vehicle and trailer need by their gross ratings a D-value of";

    private protected override string Advice(RatingLine line) => "Fit a part that is rated for it.";

    private protected override FactDeclaration At(RatingLine line) => NamingOwner(line);
}
