using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A road's grade is its rise over its run, the tangent of its angle: 0.06 is 6 %. Uphill is positive.</summary>
public static class Slope
{
    /// <summary>Sine of the road's angle: rise over distance driven.</summary>
    /// <param name="grade">Rise over run, any finite value.</param>
    public static double Sine(double grade) => Finite(grade) / Math.Sqrt(1 + (grade * grade));

    /// <summary>Cosine of the road's angle.</summary>
    /// <param name="grade">Rise over run, any finite value.</param>
    public static double Cosine(double grade) => 1 / Math.Sqrt(1 + (Finite(grade) * grade));

    /// <summary>The grade of a stretch from its rise and the distance driven along it (both m); NaN if it rises more than it is long.</summary>
    public static double FromRise(double rise, double distance)
    {
        double sine = rise / Positive(distance);
        return Math.Abs(sine) < 1 ? sine / Math.Sqrt(1 - (sine * sine)) : double.NaN;
    }
}
