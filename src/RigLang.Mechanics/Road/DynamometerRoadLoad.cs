using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// Road load as a roller test bench is set: F = F0 + F1 v + F2 v², v in m/s. The middle term hides part of the rolling and part of the air.
/// </summary>
/// <param name="F0">N.</param>
/// <param name="F1">N/(m/s).</param>
/// <param name="F2">N/(m/s)².</param>
public readonly record struct DynamometerRoadLoad(double F0, double F1, double F2)
{
    private const double PoundForce = 4.4482216152605, Mile = 1609.344, Hour = 3600;

    /// <summary>Density to which coast-downs are corrected, kg/m³. Source: 40 CFR 1066.310.</summary>
    public const double ReferenceDensity = 1.17;

    /// <summary>From the coefficients of US certification data.</summary>
    /// <param name="a">lbf.</param>
    /// <param name="b">lbf/mph.</param>
    /// <param name="c">lbf/mph².</param>
    public static DynamometerRoadLoad FromCustomary(double a, double b, double c) =>
        new(a * PoundForce, b * PoundForce * Hour / Mile, c * PoundForce * (Hour / Mile) * (Hour / Mile));

    /// <summary>Force at a speed (m/s), N.</summary>
    public double Force(double speed) => Finite(F0 + (speed * (F1 + (F2 * speed))));

    /// <summary>Power at a speed (m/s), W.</summary>
    public double Power(double speed) => Finite(speed * Force(speed));

    /// <summary>
    /// The same road load in a form that mass, air density, wind and grade can change: F2 becomes drag area at the reference density,
    /// F0 and F1 roll with the test mass. At that mass and density the force is the same at every speed.
    /// </summary>
    /// <param name="testMass">Mass of the test, kg, above zero.</param>
    /// <param name="referenceDensity">kg/m³, above zero.</param>
    public RoadLoad ToRoadLoad(double testMass, double referenceDensity = ReferenceDensity)
    {
        double weight = Positive(testMass) * Constants.Gravity;
        return new RoadLoad(testMass, new Rolling(Finite(F0 / weight), Finite(F1 / weight)), Finite(2 * F2 / Positive(referenceDensity)));
    }
}
