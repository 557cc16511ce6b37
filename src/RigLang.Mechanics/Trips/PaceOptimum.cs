using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>When to leave a charger.</summary>
/// <param name="Charge">State of charge, 0 to 1.</param>
/// <param name="Power">Energy gained over the whole stop, overhead included, W; the charging power when leaving.</param>
public readonly record struct Departure(double Charge, double Power);

/// <summary>
/// The best steady pace in closed form, on a level road with constant speed. Near the best speed the curve is flat: a few km/h cost next to nothing. Law and
/// stability
/// cap it.
/// </summary>
public static class PaceOptimum
{
    /// <summary>
    /// Speed of the shortest time from door to door, charging included, m/s: ∛(η (P_c + P_aux)/(ρ C_dA)). Mass, rolling and a constant grade do not matter.
    /// </summary>
    /// <param name="driveEfficiency">Battery to wheel, above 0, to 1.</param>
    /// <param name="chargingPower">Mean power into the battery, W, above zero.</param>
    /// <param name="auxiliary">W, zero or above.</param>
    /// <param name="density">kg/m³, above zero.</param>
    /// <param name="dragArea">m², above zero.</param>
    public static double FastestSpeed(double driveEfficiency, double chargingPower, double auxiliary, double density, double dragArea) =>
        Finite(Math.Cbrt(Positive(Within(driveEfficiency, 0, 1)) * (Positive(chargingPower) + NotNegative(auxiliary)) / (Positive(density) * Positive(dragArea))));

    /// <summary>Speed of the least energy over distance, m/s: slower, the auxiliary power takes more than the air saves.</summary>
    public static double LeastEnergySpeed(double driveEfficiency, double auxiliary, double density, double dragArea) =>
        Finite(Math.Cbrt(Positive(Within(driveEfficiency, 0, 1)) * NotNegative(auxiliary) / (Positive(density) * Positive(dragArea))));

    /// <summary>
    /// When to leave a charger if many stops are alike: at the charge where the power has fallen to the mean of the whole stop.
    /// </summary>
    /// <param name="curve">Charging power at the stop.</param>
    /// <param name="capacity">J, above zero.</param>
    /// <param name="arrival">State of charge on arrival, 0 to 1.</param>
    /// <param name="overhead">Time of the stop besides charging, s, above zero.</param>
    public static Departure LeaveCharger(ChargingCurve curve, double capacity, double arrival, double overhead)
    {
        double start = Within(arrival, 0, 1), pause = Positive(overhead);
        if (double.IsNaN(start + pause) || start >= 1)
            return new Departure(double.NaN, double.NaN);
        double Mean(double charge) => capacity * (charge - start) / (pause + curve.Time(capacity, start, charge));
        LeastResult best = Extremum.Least(charge => -Mean(charge), start, 1, 200);
        return new Departure(best.Place, Finite(-best.Value));
    }
}
