using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Suspension of the tow vehicle's rear axle, as the V-value asks for it.</summary>
public enum RearSuspension
{
    /// <summary>Air, or the same in effect.</summary>
    Air,

    /// <summary>Any other.</summary>
    Other,
}

/// <summary>
/// Characteristic values of couplings after UN R55 (definitions recalled from memory). Masses kg, results N; the regulation rounds gravity to 9.81.
/// </summary>
public static class CouplingValues
{
    /// <summary>D-value of a drawbar trailer or ball coupling, N.</summary>
    /// <param name="vehicleGross">Tow vehicle's gross mass, nose load included, kg, above zero.</param>
    /// <param name="trailerGross">Trailer's gross mass, kg, above zero.</param>
    public static double D(double vehicleGross, double trailerGross)
    {
        double t = Positive(vehicleGross), r = Positive(trailerGross);
        return Finite(Constants.CouplingGravity * t * r / (t + r));
    }

    /// <summary>
    /// D_c-value, N, of a centre-axle trailer above 3.5 t: the same form with the trailer's axle load (as mass, kg) in place of its gross mass.
    /// </summary>
    public static double Dc(double vehicleGross, double trailerAxleMass) => D(vehicleGross, trailerAxleMass);

    /// <summary>V-value of a centre-axle trailer above 3.5 t, N: the vertical shake of a long loading floor on a short drawbar.</summary>
    /// <param name="trailerAxleMass">kg.</param>
    /// <param name="loadingLength">m, above zero.</param>
    /// <param name="drawbarLength">m, above zero.</param>
    /// <param name="suspension">Of the tow vehicle's rear axle.</param>
    public static double V(double trailerAxleMass, double loadingLength, double drawbarLength, RearSuspension suspension)
    {
        double acceleration = suspension == RearSuspension.Air ? 1.8 : 2.4;
        double ratio = Positive(loadingLength) / Positive(drawbarLength);
        return Finite(acceleration * Positive(trailerAxleMass) * Math.Max(1, ratio * ratio));
    }

    /// <summary>
    /// Largest trailer gross mass, kg, that a plate's D-value admits behind a vehicle. NaN when the plate admits any mass,
    /// that is when <paramref name="dValue"/> is at least <c>9.81 · vehicleGross</c>.
    /// </summary>
    public static double LargestTrailer(double vehicleGross, double dValue)
    {
        double weight = Constants.CouplingGravity * Positive(vehicleGross);
        return Finite(vehicleGross * Positive(dValue) / Positive(weight - dValue));
    }
}
