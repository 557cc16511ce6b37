using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Lengths that follow from a tyre's designation, m.</summary>
public static class TyreSize
{
    /// <summary>Aspect ratio where a size leaves it out (European practice, value from memory).</summary>
    public const double DefaultAspect = 0.80;

    /// <summary>Rolling circumference of a radial tyre over its outer diameter (ETRTO, value from memory).</summary>
    public const double RollingCircumferenceFactor = 3.05;

    /// <summary>Static loaded radius over half the outer diameter, middle of 0.94 to 0.97 (value from memory).</summary>
    public const double LoadedRadiusFactor = 0.955;

    /// <summary>Outer diameter: rim and twice the sidewall.</summary>
    /// <param name="width">Section width, m, above zero.</param>
    /// <param name="aspect">Sidewall height over width, 0.6 for "/60".</param>
    /// <param name="rim">Rim diameter, m.</param>
    public static double OuterDiameter(double width, double aspect, double rim) => Finite(Positive(rim) + (2 * Positive(width) * Positive(aspect)));

    /// <summary>Distance rolled in one turn under load, m.</summary>
    public static double RollingCircumference(double outerDiameter) => Finite(RollingCircumferenceFactor * Positive(outerDiameter));

    /// <summary>Radius that turns wheel speed into road speed, m.</summary>
    public static double RollingRadius(double outerDiameter) => RollingCircumference(outerDiameter) / (2 * Math.PI);

    /// <summary>Height of the axle over the road under load, m (estimate).</summary>
    public static double LoadedRadius(double outerDiameter) => LoadedRadiusFactor * Positive(outerDiameter) / 2;
}
