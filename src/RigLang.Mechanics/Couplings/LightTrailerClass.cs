namespace RigLang.Mechanics;

/// <summary>A class of light trailers after SAE J684 (values from memory: common practice, not a limit).</summary>
/// <param name="Number">1 to 4.</param>
/// <param name="GrossMass">Largest gross trailer mass, kg; also the least strength of the safety chains in kg-force for classes 1 to 3.</param>
/// <param name="LeastBall">Least nominal ball diameter, m; NaN where the marked strength decides.</param>
public sealed record LightTrailerClass(int Number, double GrossMass, double LeastBall)
{
    private const double Pound = 0.45359237, Inch = 0.0254;

    /// <summary>The four classes, lightest first.</summary>
    public static IReadOnlyList<LightTrailerClass> All { get; } =
    [
        new(1, 2000 * Pound, 1.875 * Inch),
        new(2, 3500 * Pound, 1.875 * Inch),
        new(3, 5000 * Pound, 2 * Inch),
        new(4, 10_000 * Pound, double.NaN),
    ];

    /// <summary>The lightest class that holds a gross mass (kg); null when none does or the mass is not known.</summary>
    public static LightTrailerClass? For(double grossMass)
    {
        foreach (LightTrailerClass one in All)
        {
            // A mass written in pounds and converted must not fall out of its class by rounding.
            if (grossMass > 0 && grossMass <= one.GrossMass * (1 + 1e-9))
                return one;
        }

        return null;
    }
}
