using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>What a tyre carries. Ratings in kg as they are marked, gauge pressures (cold) in Pa.</summary>
public static class TyreLoad
{
    /// <summary>
    /// A passenger-car tyre on a trailer, truck, bus or multipurpose vehicle: its rating is divided by this first. Source: 49 CFR 571.110 S4.2.2.2.
    /// </summary>
    public const double PassengerTyreDivisor = 1.10;

    /// <summary>
    /// Share of the rating that a vehicle's normal load may use. Source: 49 CFR 571.110 S4.2.1.2 and S4.2.2.3; not for trailers without seats.
    /// </summary>
    public const double NormalLoadShare = 0.94;

    /// <summary>
    /// Least rating of each tyre as a share of the axle's mass, light European trailers to 100 km/h (Regulation (EU) 458/2011, value from memory).
    /// </summary>
    public const double EuropeanTrailerShare = 0.45;

    /// <summary>Load capacity at a pressure, kg. More pressure than rated does not raise the rating.</summary>
    /// <param name="rating">kg, from the load index or the sidewall.</param>
    /// <param name="pressure">Cold gauge pressure, Pa, zero or above.</param>
    /// <param name="ratedPressure">Pressure at which the rating holds, Pa, above zero.</param>
    /// <param name="exponent">See <see cref="TyreClasses.PressureExponent"/>; 0 to 1.</param>
    public static double AtPressure(double rating, double pressure, double ratedPressure, double exponent)
    {
        double share = NotNegative(pressure) / Positive(ratedPressure);
        return Finite(NotNegative(rating) * Math.Pow(Math.Min(1, share), Within(exponent, 0, 1)));
    }

    /// <summary>Least cold pressure, Pa, that carries a load; NaN when the load is above the rating.</summary>
    /// <param name="load">Load of one tyre, kg.</param>
    /// <param name="rating">kg.</param>
    /// <param name="ratedPressure">Pa.</param>
    /// <param name="exponent">Above 0, to 1.</param>
    public static double PressureFor(double load, double rating, double ratedPressure, double exponent)
    {
        double share = Within(NotNegative(load) / Positive(rating), 0, 1);
        return Finite(Positive(ratedPressure) * Math.Pow(share, 1 / Positive(Within(exponent, 0, 1))));
    }

    /// <summary>The exponent that two points of a load table imply.</summary>
    public static double Exponent(double load1, double pressure1, double load2, double pressure2) =>
        Finite(Math.Log(Positive(load2) / Positive(load1)) / Math.Log(Positive(pressure2) / Positive(pressure1)));

    /// <summary>What all tyres of an axle carry together, kg.</summary>
    /// <param name="rating">Of one tyre, kg.</param>
    /// <param name="tyres">Number on the axle.</param>
    /// <param name="derate">A passenger-car tyre on a trailer or truck under the US rules.</param>
    public static double Axle(double rating, int tyres, bool derate) =>
        tyres > 0 ? Finite(NotNegative(rating) * tyres / (derate ? PassengerTyreDivisor : 1)) : double.NaN;

    /// <summary>Absolute pressure after warming at constant volume, Pa: in proportion to the absolute temperature.</summary>
    /// <param name="absolutePressure">Pa, above zero.</param>
    /// <param name="from">K, above zero.</param>
    /// <param name="to">K, above zero.</param>
    public static double WarmedPressure(double absolutePressure, double from, double to) => Finite(Positive(absolutePressure) * Positive(to) / Positive(from));
}
