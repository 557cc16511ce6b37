namespace RigLang.Mechanics;

/// <summary>
/// The US Grade Severity Rating System for heavy trucks with drum brakes (Johnson et al., FHWA-RD-81-185, 1982; Bowman, FHWA-IP-88-015, 1989; constants from
/// memory). Not valid
/// for light rigs with disc brakes: for those use <see cref="DescentEnergy"/>. Its units are its own: lb, mi, mi/h, °F.
/// </summary>
public static class GradeSeverity
{
    /// <summary>Highest temperature that brakes may have after the descent and an emergency stop, °F.</summary>
    public const double LimitFahrenheit = 500;

    /// <summary>Temperature after the descent, °F.</summary>
    /// <param name="weightPounds">lb, above zero.</param>
    /// <param name="grade">Fall over run, above zero.</param>
    /// <param name="lengthMiles">mi, above zero.</param>
    /// <param name="speedMilesPerHour">mi/h, above zero.</param>
    public static double FinalFahrenheit(double weightPounds, double grade, double lengthMiles, double speedMilesPerHour)
    {
        double v = Domain.Positive(speedMilesPerHour), drag = 459.35 + (0.132 * v * v);
        double power = (((Domain.Positive(weightPounds) * Domain.Positive(grade)) - drag) * v / 375) - 73;
        double cooling = 1.23 + (0.0256 * v), warming = 1 / (0.100 + (0.00208 * v));
        const double start = 150, air = 90;
        return Domain.Finite(start + ((air - start + (warming * power)) * (1 - Math.Exp(-cooling * Domain.Positive(lengthMiles) / v))));
    }

    /// <summary>What one emergency stop adds, °F.</summary>
    public static double StopFahrenheit(double weightPounds, double speedMilesPerHour) =>
        Domain.Finite(3.11e-7 * Domain.Positive(weightPounds) * speedMilesPerHour * speedMilesPerHour);
}
