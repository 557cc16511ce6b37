using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>When a vehicle or trailer tips in a curve, by its track and the height of its mass centre.</summary>
public static class Rollover
{
    /// <summary>Share of the rigid threshold that springs and tyres leave (0.8 to 0.9, value from memory).</summary>
    public const double ComplianceShare = 0.85;

    /// <summary>
    /// Static stability factor: half the track over the height of the mass centre. With a rigid body this is the lateral acceleration in g that tips it.
    /// </summary>
    /// <param name="track">Middle to middle of the wheels, m, above zero.</param>
    /// <param name="height">Of the mass centre, m, above zero.</param>
    /// <param name="aside">Mass centre off the middle, m; the nearer side counts.</param>
    public static double StabilityFactor(double track, double height, double aside = 0) =>
        Finite(((Positive(track) / 2) - Math.Abs(aside)) / Positive(height));

    /// <summary>Lateral acceleration, m/s², that a stability factor stands, springs and tyres allowed for.</summary>
    public static double Threshold(double stabilityFactor, double complianceShare = ComplianceShare) =>
        Finite(NotNegative(stabilityFactor) * Within(complianceShare, 0, 1) * Constants.Gravity);

    /// <summary>Lateral acceleration in a curve, m/s².</summary>
    /// <param name="speed">m/s.</param>
    /// <param name="radius">m, above zero.</param>
    public static double LateralAcceleration(double speed, double radius) => Finite(speed * speed / Positive(radius));

    /// <summary>Speed at which a curve reaches a lateral acceleration, m/s.</summary>
    public static double CurveSpeed(double lateralAcceleration, double radius) => Finite(Math.Sqrt(NotNegative(lateralAcceleration) * Positive(radius)));

    /// <summary>
    /// Chance that a single-vehicle crash is a rollover, by the NHTSA model of 2003 (values from memory; passenger vehicles): for a factor above 0.90.
    /// </summary>
    public static double CrashRisk(double stabilityFactor, bool tippedUp)
    {
        double exponent = (tippedUp ? 2.6968 : 2.8891) + (1.1686 * Math.Log(Positive(stabilityFactor - 0.90)));
        return Finite(1 / (1 + Math.Exp(exponent)));
    }
}
