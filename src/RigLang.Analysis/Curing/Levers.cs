using System.Collections.Immutable;

namespace RigLang.Analysis.Curing;

/// <summary>What can be changed, and the usual combinations of it. A new lever is added here or beside the one check that has it.</summary>
public static class Levers
{
    public static Lever MoveItem { get; } = new("move an item of a load", LoadLevers.Moves);

    public static Lever TakeOut { get; } = new("carry less of an item", LoadLevers.TakenOut);

    public static Lever LeaveBehind { get; } = new("leave an item at home", LoadLevers.LeftBehind);

    public static Lever LeaveSeveral { get; } = new("where one isn't enough, leave several items at home", LoadLevers.SeveralLeftBehind) { IsLastResort = true };

    public static Lever FillTank { get; } = new("travel with another level in a tank", LoadLevers.Fills);

    public static Lever SetBars { get; } = new("set the spring bars otherwise", SettingLevers.Bars);

    public static Lever ChangeBall { get; } = new("carry the ball higher or lower", SettingLevers.Ball);

    public static Lever Inflate { get; } = new("raise a pressure within the tyre's range", SettingLevers.Pressure);

    public static Lever DriveSlower { get; } = new("drive slower", SpeedLevers.Slower);

    public static Lever LeaveWithMore { get; } = new("charge or fill up more before", ChargeLevers.More);

    public static Lever StopBetween { get; } = new("add a stop at a place on the way", static (_, _) => []) { Insert = ChargeLevers.Stops };

    /// <summary>What moves loads about.</summary>
    public static ImmutableArray<Lever> Loading { get; } = [MoveItem, FillTank, TakeOut, LeaveBehind, LeaveSeveral];

    /// <summary>What makes the whole lighter.</summary>
    public static ImmutableArray<Lever> Lightening { get; } = [FillTank, TakeOut, LeaveBehind, LeaveSeveral];

    /// <summary>What gets a trip to its places.</summary>
    public static ImmutableArray<Lever> Reaching { get; } = [LeaveWithMore, StopBetween, DriveSlower];
}
