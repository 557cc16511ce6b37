using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>The checks of hitch, ball, receiver and spring bars.</summary>
public static class HitchChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new MountOverRating(), new DValueTooSmall(), new BallSizeMismatch(), new ShankSizeMismatch(), new BothOverhangForms(),
        new HitchWithoutReach(), new MountsNotTwo(), new BarsOnCarryingHitch(), new SetTwice(), new BarsTooLight(),
        new OverRestored(), new NoSwayDevice(), new CarryingRatingUnknown(), new DropAndRise(), new BarsNotSet(),
    ];
}
