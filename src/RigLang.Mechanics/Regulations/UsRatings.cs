using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Arithmetic of the US rules on ratings and placards, 49 CFR 571.110. Masses in kg.</summary>
public static class UsRatings
{
    /// <summary>Mass of one occupant (S3).</summary>
    public const double Occupant = 68;

    /// <summary>A recreation trailer's axle ratings and tongue together must reach its gross rating (S9.2). The surplus, kg; negative is a breach.</summary>
    /// <param name="axleRatings">Sum of the axle ratings.</param>
    /// <param name="tongue">Tongue mass; the least of a range.</param>
    /// <param name="grossRating">Gross rating of the trailer.</param>
    public static double RecreationTrailerSurplus(double axleRatings, double tongue, double grossRating) => Finite(axleRatings + tongue - grossRating);

    /// <summary>A motor home's axle ratings together must reach its gross rating (S9.1). The surplus, kg.</summary>
    public static double MotorHomeSurplus(double axleRatings, double grossRating) => Finite(axleRatings - grossRating);

    /// <summary>Weight added late that asks for a new label, kg: above the lesser of 1.5 % of the gross rating and 45.4 kg (S10.1).</summary>
    public static double LateWeightLimit(double grossRating) => Math.Min(0.015 * Positive(grossRating), 45.4);

    /// <summary>Occupants of the vehicle's normal load, by its seats (Table I); NaN outside 2 to 22 seats.</summary>
    public static double NormalOccupants(int seats) => seats switch
    {
        >= 2 and <= 4 => 2,
        >= 5 and <= 10 => 3,
        >= 11 and <= 15 => 5,
        >= 16 and <= 22 => 7,
        _ => double.NaN,
    };

    /// <summary>What the tyres of an axle carry over its rating, kg (S4.2.2.1, S4.2.2.2); negative is a breach.</summary>
    public static double TyreSurplus(double tyreRating, int tyres, bool passengerTyreOnTrailerOrTruck, double axleRating) =>
        Finite(TyreLoad.Axle(tyreRating, tyres, passengerTyreOnTrailerOrTruck) - axleRating);

    /// <summary>
    /// Whether a trailer may go without brakes (49 CFR 393.42(b)(3), value from memory): gross at most 3000 lb and its axle mass at most 40 % of
    /// the towing vehicle's. Null when a mass is not known.
    /// </summary>
    public static bool? MayBeUnbraked(double trailerGross, double trailerAxleMass, double vehicleAxleMass)
    {
        if (double.IsNaN(Positive(trailerGross) + NotNegative(trailerAxleMass) + Positive(vehicleAxleMass)))
            return null;
        return trailerGross <= 3000 * 0.45359237 * (1 + 1e-9) && trailerAxleMass <= 0.40 * vehicleAxleMass;
    }
}
