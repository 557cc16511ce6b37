using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>The checks of how a rig handles, by the limits of its practice.</summary>
public static class HandlingChecks
{
    /// <summary>Those that speak for one result each.</summary>
    public static ImmutableArray<PracticeCheck> OfPractice { get; } =
    [
        new TongueBelowUsual(), new TongueAboveUsual(), new OverhangLong(), new TrailerHeavy(), new BallOffLevel(),
        new DampingLow(), new NearRating(), new FrontAxleLight(), new TipsEasily(),
    ];

    public static ImmutableArray<Check> All { get; } = [.. OfPractice, new OutsidePractice(), new OutsidePracticeOnTrip(), new UnstableAtSpeed(), new UnstableOnLeg(), new SteadyByFriction(), new SpeedBeyondPower()];
}
