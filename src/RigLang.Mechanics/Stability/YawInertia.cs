using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Estimates of yaw inertia, kg·m². Expect ± 10 % for a car, ± 25 % for a trailer.</summary>
public static class YawInertia
{
    /// <summary>A car: mass · a · b (0.9 to 1.05 of it, value from memory).</summary>
    /// <param name="mass">kg, above zero.</param>
    /// <param name="toFront">Mass centre to front axle, m.</param>
    /// <param name="toRear">Mass centre to rear axle, m.</param>
    public static double Vehicle(double mass, double toFront, double toRear) => Finite(Positive(mass) * Positive(toFront) * Positive(toRear));

    /// <summary>An evenly filled box about its middle: mass/12 · (length² + width²).</summary>
    public static double Box(double mass, double length, double width) =>
        Finite(Positive(mass) / 12 * ((Positive(length) * length) + (Positive(width) * width)));

    /// <summary>About the common mass centre when items are loaded on a body.</summary>
    /// <param name="inertia">Of the body about its own mass centre, above zero.</param>
    /// <param name="body">Mass and place of the body.</param>
    /// <param name="items">Masses and places on the same axis; each counts as a point.</param>
    public static double With(double inertia, PointMass body, ReadOnlySpan<PointMass> items)
    {
        PointMass[] all = [body, .. items];
        PointMass centre = PointMass.Sum(all);
        double sum = Positive(inertia);
        foreach (PointMass one in all)
        {
            double along = one.Position - centre.Position, across = one.Left - centre.Left;
            sum += one.Mass * ((along * along) + (across * across));
        }

        return Finite(sum);
    }
}
