using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A stretch of road driven steadily.</summary>
/// <param name="Length">Along the road, m, zero or above.</param>
/// <param name="Grade">Rise over run, uphill positive.</param>
/// <param name="Speed">m/s, above zero.</param>
/// <param name="Density">Air density, kg/m³.</param>
/// <param name="Wind">Wind over the road.</param>
public readonly record struct RouteSegment(double Length, double Grade, double Speed, double Density, Wind Wind = default)
{
    /// <summary>s.</summary>
    public double Time => Finite(NotNegative(Length) / Positive(Speed));

    /// <summary>Height gained, m; lost is negative.</summary>
    public double Rise => Finite(NotNegative(Length) * Slope.Sine(Grade));
}
