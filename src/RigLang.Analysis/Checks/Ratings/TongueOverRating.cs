using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>The tongue load is more than the vehicle, the hitch or the coupling may bear.</summary>
public sealed class TongueOverRating() : RatingCheck(RatingFamily.Tongue)
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL306",
        Slug = "tongue-over-rating",
        Severity = Severity.Error,
        Summary = "The tongue load is more than the vehicle, the hitch or the coupling may bear.",
        Why = "The tow bar bends its fastenings, and what presses behind the rear axle lifts the front one that steers.",
        Bad = RigExample.Pair.With(("tongue-rating 230 kg", "tongue-rating 75 kg")),
        Good = RigExample.Pair,
        Fix = "Move load in the trailer rearward, a little at a time: too light a tongue makes a trailer swing.",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    private protected override string Says(RatingLine line) => "The tongue load is";

    private protected override string Advice(RatingLine line) => "Move load in the trailer rearward until it fits, but keep the tongue heavy enough to tow steadily.";

    private protected override FactDeclaration At(RatingLine line) => NamingOwner(line);
}
