using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Wind over the road as a vehicle meets it.</summary>
/// <param name="Head">Against the direction of travel, m/s; a tailwind is negative.</param>
/// <param name="Side">Across it, m/s; the sign only tells the side (positive comes from the right).</param>
public readonly record struct Wind(double Head, double Side)
{
    /// <summary>No wind.</summary>
    public static Wind Calm { get; } = new(0, 0);

    /// <summary>Components of a wind on a course.</summary>
    /// <param name="speed">m/s, zero or above.</param>
    /// <param name="from">Where it comes from, rad clockwise from north.</param>
    /// <param name="course">Where the vehicle goes, rad clockwise from north.</param>
    public static Wind OnCourse(double speed, double from, double course)
    {
        double angle = from - course;
        return new Wind(Finite(NotNegative(speed) * Math.Cos(angle)), Finite(speed * Math.Sin(angle)));
    }

    /// <summary>Speed of the air over the vehicle, m/s.</summary>
    /// <param name="vehicleSpeed">m/s.</param>
    public double AirSpeed(double vehicleSpeed) => Finite(Math.Sqrt(((vehicleSpeed + Head) * (vehicleSpeed + Head)) + (Side * Side)));

    /// <summary>Angle at which that air comes, rad from straight ahead.</summary>
    public double Yaw(double vehicleSpeed) => Finite(Math.Atan2(Side, vehicleSpeed + Head));

    /// <summary>
    /// Wind at a height from a forecast, which is for 10 m: the power law, exponent 0.14 (open land) to 0.25 (built up); at vehicle height some
    /// 0.6 to 0.7 of the forecast (common practice).
    /// </summary>
    /// <param name="forecast">m/s at 10 m.</param>
    /// <param name="height">m, above zero.</param>
    /// <param name="exponent">0 to 1.</param>
    public static double AtHeight(double forecast, double height, double exponent) => Finite(forecast * Math.Pow(Positive(height) / 10, Within(exponent, 0, 1)));
}
