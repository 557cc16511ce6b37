using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Checks.Ratings;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>The receiver presses or pulls harder on one of its mounts than the mount may bear.</summary>
public sealed class MountOverRating() : RatingCheck(RatingFamily.Mount)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL401",
        Slug = "mount-over-rating",
        Severity = Severity.Error,
        Summary = "The receiver presses or pulls harder on one of its mounts than the mount may bear.",
        Why = "Spring bars turn the receiver in the chassis: the forward bolts may carry more than the whole tongue load. The forces here are those of a standing rig; bumps multiply them.",
        Bad = RigExample.Bars.With(("    pin-overhang 48 in", "    pin-overhang 48 in\n    mount rear at 3 in behind pin\n    mount forward at 20 in ahead of pin\n    mount-rating 800 lbf")),
        Good = RigExample.Bars.With(("    pin-overhang 48 in", "    pin-overhang 48 in\n    mount rear at 3 in behind pin\n    mount forward at 20 in ahead of pin\n    mount-rating 2000 lbf")),
        Fix = "Less tongue load or less restoration; a stronger receiver or one with a longer hold on the chassis.",
        Source = "the receiver as a beam on two lines",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    private protected override string Says(RatingLine line) => "At the receiver's harder worked mount act";

    private protected override string Advice(RatingLine line) => "That is standing still; bumps multiply it. Set less restoration, or lighten the tongue.";

    private protected override FactDeclaration At(RatingLine line) => RigFacts.Vehicle;
}
