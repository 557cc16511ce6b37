namespace RigLang.Mechanics;

/// <summary>One way to drive a leg.</summary>
/// <param name="Speed">What it is driven at, m/s; only carried along.</param>
/// <param name="Time">s, above zero.</param>
/// <param name="Energy">Out of the battery, J; negative if the leg charges it.</param>
public readonly record struct LegChoice(double Speed, double Time, double Energy);

/// <summary>A stop between legs. Times count in s from the start of the day.</summary>
public sealed record PlanStop
{
    /// <summary>Charging power into the battery; null without a charger.</summary>
    public ChargingCurve? Charger { get; init; }

    /// <summary>Time that charging costs besides itself (uncouple, plug, pay), s.</summary>
    public double Overhead { get; init; }

    /// <summary>Least length of the stop, s.</summary>
    public double Pause { get; init; }

    /// <summary>Leaving no earlier than this.</summary>
    public double NotBefore { get; init; } = double.NegativeInfinity;

    /// <summary>Charging starts no earlier than this.</summary>
    public double Opens { get; init; } = double.NegativeInfinity;

    /// <summary>Charging ends no later than this.</summary>
    public double Closes { get; init; } = double.PositiveInfinity;

    /// <summary>Arriving no later than this.</summary>
    public double ArriveBy { get; init; } = double.PositiveInfinity;
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

    /// <summary>Steps of the state of charge between empty and full, 10 to 5000.</summary>
    public int Steps { get; init; } = 1000;
}

/// <summary>A leg of a plan, with the stop behind it.</summary>
/// <param name="Choice">How it is driven.</param>
/// <param name="Leave">Leaving, s from the start.</param>
/// <param name="Arrive">Arriving, s from the start.</param>
/// <param name="ArrivalCharge">State of charge on arrival.</param>
/// <param name="DepartureCharge">State of charge when leaving that place again.</param>
public readonly record struct PlannedLeg(LegChoice Choice, double Leave, double Arrive, double ArrivalCharge, double DepartureCharge);

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
public sealed record DayPlan(PlanOutcome Outcome, IReadOnlyList<PlannedLeg> Legs, int BreakingLeg, double Shortage)
{
    /// <summary>Arrival at the end, s from the start; NaN without a plan.</summary>
    public double Arrival => Legs.Count > 0 ? Legs[^1].Arrive : double.NaN;
}
