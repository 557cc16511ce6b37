using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// A leg of which only distance, climb and descent are known, as three stretches: one that climbs, one that descends, one that is level.
/// Height is kept exactly. What has to be assumed is how steep the hills are: gentle hills give their energy back by rolling, steep ones
/// only through regeneration, or not at all.
/// </summary>
public static class RouteSplit
{
    /// <summary>The assumed grade of hills, 4 % (our choice).</summary>
    public const double HillGrade = 0.04;

    /// <summary>Stretches of a leg. Hills become steeper than assumed where the distance would not hold them.</summary>
    /// <param name="distance">m, above zero.</param>
    /// <param name="climb">Sum of all climbs, m, zero or above.</param>
    /// <param name="descent">Sum of all descents, m, zero or above.</param>
    /// <param name="speed">m/s.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="wind">Wind over the road.</param>
    /// <param name="hillGrade">Grade of the hills, above zero.</param>
    /// <returns>Three stretches, in the order climb, level, descent. Lengths are NaN if climb and descent exceed the distance.</returns>
    public static IReadOnlyList<RouteSegment> FromTotals(
        double distance, double climb, double descent, double speed, double density, Wind wind = default, double hillGrade = HillGrade)
    {
        double length = Positive(distance), up = NotNegative(climb), down = NotNegative(descent);
        double sine = Math.Max(Slope.Sine(Positive(hillGrade)), (up + down) / length);
        double grade = Finite(sine / Math.Sqrt(1 - (sine * sine)));
        double climbing = Finite(up / sine), descending = Finite(down / sine);
        double level = double.IsNaN(grade) ? double.NaN : Math.Max(0, length - climbing - descending);
        return
        [
            new RouteSegment(climbing, grade, speed, density, wind),
            new RouteSegment(level, 0, speed, density, wind),
            new RouteSegment(descending, -grade, speed, density, wind),
        ];
    }
}
