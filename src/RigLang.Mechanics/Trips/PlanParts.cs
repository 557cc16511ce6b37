namespace RigLang.Mechanics;

/// <summary>One way to drive a leg.</summary>
/// <param name="Speed">What it is driven at, m/s; only carried along.</param>
/// <param name="Time">s, above zero.</param>
/// <param name="Energy">Out of the battery, J; negative if the leg charges it.</param>
public readonly record struct LegChoice(double Speed, double Time, double Energy)
{
    /// <summary>Most that is out of the battery anywhere on the way, J: on a pass more than at the end. What is less than <see cref="Energy"/> says nothing.</summary>
    public double Deepest { get; init; }

    /// <summary>Most that is taken from any place on the way to the end, J: a full battery takes nothing back before it, so no more than the rest is aboard at the end.</summary>
    public double SinceFull { get; init; }

    /// <summary>Least state of charge on arrival that this way of driving asks for beside the plan's reserve, 0 to 1: a reserve in distance weighs more at speed.</summary>
    public double Reserve { get; init; }

    internal bool IsUsable =>
        Time > 0 && double.IsFinite(Time) && double.IsFinite(Energy) && double.IsFinite(Deepest) && double.IsFinite(SinceFull) && !double.IsNaN(Domain.NotNegative(Reserve));

    /// <summary>State of charge on arrival.</summary>
    internal double Arrival(double start, double capacity) => Math.Min(start - (Energy / capacity), 1 - (Math.Max(0, SinceFull) / capacity));
}

/// <summary>A post at which a stop can charge.</summary>
/// <param name="Curve">Charging power into the battery.</param>
/// <param name="Overhead">Time that charging costs besides itself (uncouple, plug, pay), s, zero or above.</param>
public sealed record PlanPost(ChargingCurve Curve, double Overhead);

/// <summary>A stop between legs. Times count in s from the start of the day.</summary>
public sealed record PlanStop
{
    /// <summary>The posts to choose from; none without a charger.</summary>
    public IReadOnlyList<PlanPost> Posts { get; init; } = [];

    /// <summary>When charging is possible; from the first minute on the plug to the last.</summary>
    public DailyWindow Opening { get; init; } = DailyWindow.Always;

    /// <summary>Least length of the stop, s.</summary>
    public double Pause { get; init; }

    /// <summary>Leaving no earlier than this.</summary>
    public double NotBefore { get; init; } = double.NegativeInfinity;

    /// <summary>Arriving no later than this.</summary>
    public double ArriveBy { get; init; } = double.PositiveInfinity;

    internal bool IsKnown => !double.IsNaN(Domain.NotNegative(Pause)) && !double.IsNaN(NotBefore) && !double.IsNaN(ArriveBy) && Opening.IsKnown
        && Posts.All(post => !double.IsNaN(Domain.NotNegative(post.Overhead)));
}

/// <summary>A day's drive to be planned.</summary>
public sealed record PlanRequest
{
    /// <summary>Energy between empty and full, J, above zero.</summary>
    public required double Capacity { get; init; }

    /// <summary>State of charge at the start, 0 to 1.</summary>
    public required double StartCharge { get; init; }

    /// <summary>Least state of charge on any arrival, 0 to 1.</summary>
    public required double Reserve { get; init; }

    /// <summary>Least state of charge at the end, 0 to 1.</summary>
    public double Goal { get; init; }

    /// <summary>Ways to drive each leg, in order.</summary>
    public required IReadOnlyList<IReadOnlyList<LegChoice>> Legs { get; init; }

    /// <summary>The stop after each leg, as many as legs; the last is the end.</summary>
    public required IReadOnlyList<PlanStop> Stops { get; init; }

    /// <summary>When each leg may be driven, from its start to its end, as many as legs; empty for any time. Who comes too late stays until the next day.</summary>
    public IReadOnlyList<DailyWindow> Hours { get; init; } = [];

    /// <summary>Steps of the state of charge between empty and full, 10 to 5000.</summary>
    public int Steps { get; init; } = 1000;

    /// <summary>Unplugging only at multiples of this state of charge, as a display shows them: 0.01 is whole percents. 0 is any step; it counts in whole steps, rounded.</summary>
    public double ChargeStep { get; init; }
}

/// <summary>A leg of a plan, with the stop behind it.</summary>
/// <param name="Choice">How it is driven.</param>
/// <param name="Leave">Leaving, s from the start.</param>
/// <param name="Arrive">Arriving, s from the start.</param>
/// <param name="ArrivalCharge">State of charge on arrival.</param>
/// <param name="DepartureCharge">State of charge when leaving that place again.</param>
/// <param name="Charging">What is charged there; null for nothing.</param>
public readonly record struct PlannedLeg(LegChoice Choice, double Leave, double Arrive, double ArrivalCharge, double DepartureCharge, PlannedCharge? Charging);

/// <summary>Charging of a plan.</summary>
/// <param name="Post">Number of the post at the stop, from 0.</param>
/// <param name="From">When the power comes on, s from the start.</param>
/// <param name="To">When it goes off.</param>
public sealed record PlannedCharge(int Post, double From, double To);

/// <summary>How planning ended.</summary>
public enum PlanOutcome
{
    /// <summary>A number is missing or impossible.</summary>
    NotComputable,

    Found,

    /// <summary>A leg takes more energy than any charge before it gives.</summary>
    OutOfEnergy,

    /// <summary>Energy would do, but a time is missed.</summary>
    OutOfTime,
}

/// <summary>The fastest plan, or what stands against one.</summary>
/// <param name="Outcome">How planning ended.</param>
/// <param name="Legs">The legs; empty without a plan.</param>
/// <param name="BreakingLeg">Number of the leg (from 0) that breaks every plan; −1 otherwise.</param>
/// <param name="Shortage">Energy that is missing there at least, J; NaN if time is missing, or with a plan.</param>
/// <param name="Lateness">Time that is missing there at least, s; NaN if energy is missing, or with a plan.</param>
public sealed record DayPlan(PlanOutcome Outcome, IReadOnlyList<PlannedLeg> Legs, int BreakingLeg, double Shortage, double Lateness)
{
    /// <summary>Arrival at the end, s from the start; NaN without a plan.</summary>
    public double Arrival => Legs.Count > 0 ? Legs[^1].Arrive : double.NaN;
}
