using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Trailer as the German 100 km/h rule classes it.</summary>
public enum SpeedRuleTrailer
{
    /// <summary>No brake, or a brake without hydraulic dampers at the axle.</summary>
    WithoutDampers,

    /// <summary>A caravan with hydraulic dampers.</summary>
    Caravan,

    /// <summary>Any other trailer with hydraulic dampers.</summary>
    Other,
}

/// <summary>
/// Limits of German law on towing with cars, masses in kg. Source: StVZO sections 42 and 44, 9th exemption regulation to the StVO section 1, texts in the
/// state of 2022-03-26; law may have changed since.
/// </summary>
public static class GermanTowing
{
    /// <summary>The state of the texts that these limits were read from.</summary>
    public static DateOnly AsOf { get; } = new(2022, 3, 26);

    /// <summary>Speed without the exemption, m/s: 80 km/h (StVO 3(3), 18(5)).</summary>
    public const double Speed = 80 / 3.6;

    /// <summary>Speed with the exemption, m/s.</summary>
    public const double SpeedWithExemption = 100 / 3.6;

    /// <summary>
    /// Largest towed mass by law, braked: the car's gross mass, one and a half times for off-road vehicles, never above 3500 kg (StVZO 42(1)).
    /// </summary>
    /// <remarks>The maker's lower figure counts before this one.</remarks>
    public static double LargestBraked(double vehicleGross, bool offRoad) => Math.Min(3500, Positive(vehicleGross) * (offRoad ? 1.5 : 1));

    /// <summary>Largest towed mass by law, unbraked: half of kerb mass + 75 kg, at most 750 kg (StVZO 42(2)).</summary>
    public static double LargestUnbraked(double kerbMass) => Math.Min(750, (Positive(kerbMass) + 75) / 2);

    /// <summary>Least nose load (as mass): 4 % of the actual trailer mass; need not exceed 25 kg up to 3.5 t, 500 kg above (StVZO 44(3)).</summary>
    public static double LeastNose(double trailerMass) => Math.Min(trailerMass <= 3500 ? 25 : 500, 0.04 * Positive(trailerMass));

    /// <summary>
    /// Largest nose load by law of trailers above 3.5 t: 15 %, at most 2000 kg; NaN for lighter ones, where the ratings alone limit it (StVZO 44(3)).
    /// </summary>
    public static double LargestNose(double trailerMass) => trailerMass > 3500 ? Math.Min(2000, 0.15 * Finite(trailerMass)) : double.NaN;

    /// <summary>A nose load above this asks for a jockey wheel, kg (StVZO 44(2)).</summary>
    public const double JockeyWheelAbove = 50;

    /// <summary>
    /// Largest gross trailer mass at 100 km/h: a factor times the kerb mass of a tow vehicle with antilock brakes. A trailer other than a caravan is capped
    /// besides by the vehicle's gross mass and its permitted towed mass.
    /// </summary>
    /// <param name="trailer">Class of the trailer.</param>
    /// <param name="stabilised">A stabiliser coupling to ISO 11555-1 or a trailer stability system.</param>
    /// <param name="kerbMass">kg.</param>
    /// <param name="vehicleGross">kg; read for <see cref="SpeedRuleTrailer.Other"/>.</param>
    /// <param name="towingRating">kg; read for <see cref="SpeedRuleTrailer.Other"/>.</param>
    public static double LargestAtHundred(SpeedRuleTrailer trailer, bool stabilised, double kerbMass, double vehicleGross, double towingRating)
    {
        double factor = (trailer, stabilised) switch
        {
            (SpeedRuleTrailer.WithoutDampers, _) => 0.3,
            (SpeedRuleTrailer.Caravan, false) => 0.8,
            (SpeedRuleTrailer.Caravan, true) => 1.0,
            (SpeedRuleTrailer.Other, false) => 1.1,
            (SpeedRuleTrailer.Other, true) => 1.2,
            _ => double.NaN,
        };
        double limit = factor * Positive(kerbMass);
        return trailer == SpeedRuleTrailer.Other ? Math.Min(limit, Math.Min(Positive(vehicleGross), Positive(towingRating))) : limit;
    }
}
