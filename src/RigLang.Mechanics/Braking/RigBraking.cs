using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A rig at full braking.</summary>
/// <param name="Deceleration">m/s².</param>
/// <param name="Push">Force of the trailer on the ball, N, forward positive; below zero the trailer holds the vehicle back.</param>
public readonly record struct RigStop(double Deceleration, double Push);

/// <summary>Braking of a tow vehicle and its trailer together, the vehicle by its tyres' grip and the trailer by the ratio of its brakes.</summary>
public static class RigBraking
{
    /// <summary>Brake force of an overrun brake over the trailer's weight at a service stop (0.49 to 0.5 by UN R13, value from memory).</summary>
    public const double OverrunRatio = 0.49;

    /// <summary>Full braking on the level.</summary>
    /// <param name="vehicleMass">kg, above zero.</param>
    /// <param name="trailerMass">kg, zero or above.</param>
    /// <param name="friction">Grip used by the vehicle's brakes, –.</param>
    /// <param name="trailerRatio">Trailer's brake force over its weight, zero without brakes.</param>
    public static RigStop Full(double vehicleMass, double trailerMass, double friction, double trailerRatio)
    {
        double vehicle = Positive(vehicleMass), trailer = NotNegative(trailerMass), g = Constants.Gravity;
        double deceleration = g * ((NotNegative(friction) * vehicle) + (NotNegative(trailerRatio) * trailer)) / (vehicle + trailer);
        return new RigStop(Finite(deceleration), Finite(Push(trailer, deceleration, trailerRatio)));
    }

    /// <summary>
    /// Full braking on the level by what stands on the wheels: the tongue's load helps the vehicle's tyres, and no trailer wheel brakes beyond its grip. What
    /// braking moves from axle to axle is left out.
    /// </summary>
    /// <param name="vehicleLoad">On the vehicle's wheels, the tongue's load included, N, above zero.</param>
    /// <param name="trailerLoad">On the trailer's wheels, N, zero or above.</param>
    /// <param name="trailerMass">The whole trailer, kg, zero or above, not more than all that stands on the wheels.</param>
    /// <param name="friction">Grip, –, zero or above.</param>
    /// <param name="trailerRatio">Trailer's brake force over the load on its wheels, zero without brakes.</param>
    /// <param name="overrun">How an overrun brake follows the push; null for brakes that the driver works.</param>
    public static RigStop OnWheels(double vehicleLoad, double trailerLoad, double trailerMass, double friction, double trailerRatio, OverrunBrake? overrun = null)
    {
        double mass = (Positive(vehicleLoad) + NotNegative(trailerLoad)) / Constants.Gravity, grip = NotNegative(friction);
        double vehicle = grip * vehicleLoad, most = Math.Min(grip, NotNegative(trailerRatio)) * trailerLoad;
        double trailer = overrun is { } brake ? brake.Slowing(vehicle, NotNegative(trailerMass) / mass, trailerMass * Constants.Gravity, most) : most;
        double deceleration = Finite((vehicle + trailer) / mass);
        return new RigStop(deceleration, Finite((trailerMass * deceleration) - trailer));
    }

    /// <summary>Force of a trailer on the ball, N, while the rig slows down.</summary>
    /// <param name="trailerMass">kg.</param>
    /// <param name="deceleration">m/s².</param>
    /// <param name="trailerRatio">Trailer's brake force over its weight.</param>
    public static double Push(double trailerMass, double deceleration, double trailerRatio) =>
        Finite(trailerMass * (deceleration - (trailerRatio * Constants.Gravity)));

    /// <summary>Slope on which a vehicle's parking brake must hold it at its gross mass, rise over run. Source: 49 CFR 571.135.</summary>
    public const double VehicleParkingGrade = 0.20;

    /// <summary>Slope on which a trailer's parking brake must hold it laden, rise over run. Source: StVZO section 41(9).</summary>
    public const double TrailerParkingGrade = 0.18;

    /// <summary>Steepest slope on which a force holds a mass, rise over run; NaN where it would hold it on any.</summary>
    /// <param name="force">Along the slope, N, zero or above.</param>
    /// <param name="mass">kg, above zero.</param>
    public static double HeldGrade(double force, double mass)
    {
        double sine = NotNegative(force) / (Positive(mass) * Constants.Gravity);
        return sine < 1 ? Finite(sine / Math.Sqrt(1 - (sine * sine))) : double.NaN;
    }

    /// <summary>Force that holds a mass on a slope, N.</summary>
    /// <param name="mass">kg.</param>
    /// <param name="grade">Rise over run.</param>
    public static double Holding(double mass, double grade) => Finite(Positive(mass) * Constants.Gravity * Math.Abs(Slope.Sine(grade)));

    /// <summary>
    /// Steepest slope that a parking brake's friction holds, rise over run: the braked axle's load on the level, its height transfer left out.
    /// </summary>
    /// <param name="brakedLoad">N.</param>
    /// <param name="mass">Whole mass to hold, kg.</param>
    /// <param name="friction">–</param>
    public static double HoldingGrade(double brakedLoad, double mass, double friction) =>
        Finite(NotNegative(friction) * NotNegative(brakedLoad) / (Positive(mass) * Constants.Gravity));
}
