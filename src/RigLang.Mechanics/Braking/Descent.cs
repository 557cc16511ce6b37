using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Where the height of a descent goes, J, and how long it takes.</summary>
/// <param name="Height">Energy of the height lost.</param>
/// <param name="Rolling">Taken by rolling.</param>
/// <param name="Air">Taken by the air; below zero if the wind pushes.</param>
/// <param name="ToHold">Left to be held back: height less rolling and air, not below zero.</param>
/// <param name="Regenerated">Held back by regeneration, at the wheels.</param>
/// <param name="Retarded">Held back by an engine brake or retarder, at the wheels.</param>
/// <param name="Brakes">Left to the friction brakes that the driver works.</param>
/// <param name="Time">s.</param>
/// <param name="Overrun">Held back by an overrun trailer's own brakes, before all others.</param>
public readonly record struct DescentEnergy(
    double Height, double Rolling, double Air, double ToHold, double Regenerated, double Retarded, double Brakes, double Time, double Overrun = 0)
{
    /// <summary>Mean power in the friction brakes, W.</summary>
    public double BrakePower => Time > 0 ? Brakes / Time : double.NaN;

    /// <summary>All heat in friction brakes, J.</summary>
    public double Friction => Brakes + Overrun;

    /// <summary>A steady descent. An overrun trailer brakes first, since it asks nobody; then regeneration takes, then the retarder, then the brakes.</summary>
    /// <param name="load">The rig.</param>
    /// <param name="stretch">Grade below zero.</param>
    /// <param name="regenerationPower">Most that regeneration holds at the wheels, W; zero without.</param>
    /// <param name="retardingPower">Most that engine brake or retarder holds at the wheels, W; zero without.</param>
    /// <param name="overrun">A trailer that brakes by itself when it is held back; null for any other.</param>
    public static DescentEnergy Of(RoadLoad load, RouteSegment stretch, double regenerationPower = 0, double retardingPower = 0, OverrunTrailer? overrun = null)
    {
        double length = NotNegative(stretch.Length), time = stretch.Time;
        double height = -load.GradeForce(stretch.Grade) * length;
        double rolling = load.RollingForce(stretch.Speed, stretch.Grade) * length, air = load.AirForce(stretch.Speed, stretch.Density, stretch.Wind) * length;
        double toHold = Math.Max(0, height - rolling - air);
        double own = overrun is { } trailer && toHold > 0 ? trailer.Force(toHold / length, load.Mass) * length : 0, left = toHold - own;
        double regenerated = Math.Min(left, NotNegative(regenerationPower) * time);
        double retarded = Math.Min(left - regenerated, NotNegative(retardingPower) * time);
        return new DescentEnergy(
            Finite(height), Finite(rolling), Finite(air), Finite(toHold), Finite(regenerated), Finite(retarded), Finite(left - regenerated - retarded), time, Finite(own));
    }

    public static DescentEnergy operator +(DescentEnergy one, DescentEnergy other) => new(
        one.Height + other.Height, one.Rolling + other.Rolling, one.Air + other.Air, one.ToHold + other.ToHold, one.Regenerated + other.Regenerated,
        one.Retarded + other.Retarded, one.Brakes + other.Brakes, one.Time + other.Time, one.Overrun + other.Overrun);

    public static DescentEnergy Add(DescentEnergy one, DescentEnergy other) => one + other;
}
