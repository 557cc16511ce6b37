using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Where the height of a descent goes, J, and how long it takes.</summary>
/// <param name="Height">Energy of the height lost.</param>
/// <param name="Rolling">Taken by rolling.</param>
/// <param name="Air">Taken by the air; below zero if the wind pushes.</param>
/// <param name="ToHold">Left to be held back: height less rolling and air, not below zero.</param>
/// <param name="Regenerated">Held back by regeneration, at the wheels.</param>
/// <param name="Retarded">Held back by an engine brake or retarder, at the wheels.</param>
/// <param name="Brakes">Left to the friction brakes.</param>
/// <param name="Time">s.</param>
public readonly record struct DescentEnergy(
    double Height, double Rolling, double Air, double ToHold, double Regenerated, double Retarded, double Brakes, double Time)
{
    /// <summary>Mean power in the friction brakes, W.</summary>
    public double BrakePower => Time > 0 ? Brakes / Time : double.NaN;

    /// <summary>A steady descent. Regeneration takes first, then the retarder, then the brakes.</summary>
    /// <param name="load">The rig.</param>
    /// <param name="stretch">Grade below zero.</param>
    /// <param name="regenerationPower">Most that regeneration holds at the wheels, W; zero without.</param>
    /// <param name="retardingPower">Most that engine brake or retarder holds at the wheels, W; zero without.</param>
    public static DescentEnergy Of(RoadLoad load, RouteSegment stretch, double regenerationPower = 0, double retardingPower = 0)
    {
        double length = NotNegative(stretch.Length), time = stretch.Time;
        double height = -load.GradeForce(stretch.Grade) * length;
        double rolling = load.RollingForce(stretch.Speed, stretch.Grade) * length, air = load.AirForce(stretch.Speed, stretch.Density, stretch.Wind) * length;
        double toHold = Math.Max(0, height - rolling - air);
        double regenerated = Math.Min(toHold, NotNegative(regenerationPower) * time);
        double retarded = Math.Min(toHold - regenerated, NotNegative(retardingPower) * time);
        return new DescentEnergy(
            Finite(height), Finite(rolling), Finite(air), Finite(toHold), Finite(regenerated), Finite(retarded), Finite(toHold - regenerated - retarded), time);
    }
}
