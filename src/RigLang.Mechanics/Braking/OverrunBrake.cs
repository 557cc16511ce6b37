using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// A trailer brake that the push at its own coupling works: nothing up to a threshold, then in proportion to what is pushed beyond it.
/// </summary>
/// <param name="Gain">Brake force over the push beyond the threshold, –.</param>
/// <param name="Threshold">Push that does nothing yet, as a share of the trailer's weight.</param>
public readonly record struct OverrunBrake(double Gain, double Threshold)
{
    /// <summary>
    /// What UN R13 annex 12 asks of a trailer with one axle: 0.49 of its weight braked for a push of at most 0.10 of it, beginning between 0.02 and 0.04 (values
    /// from memory).
    /// </summary>
    public static OverrunBrake ByRegulation { get; } = new(0.49 / (0.10 - 0.03), 0.03);

    /// <summary>Brake force, N, while a force has to be held on the trailer: <c>c (force − threshold · weight)</c>, c = gain/(1 + gain); the ball carries the rest.</summary>
    /// <param name="force">What would push at the ball without the brake, N; zero or below brakes nothing.</param>
    /// <param name="trailerWeight">N, zero or above.</param>
    /// <param name="most">Most that the brake gives, N, zero or above.</param>
    public double Force(double force, double trailerWeight, double most) => Finite(Math.Min(NotNegative(most), Math.Max(0, Shared * (force - Idle(trailerWeight)))));

    /// <summary>Brake force, N, of a trailer in a rig that its vehicle slows with a given force.</summary>
    /// <param name="vehicleForce">Brake force of the vehicle, N, zero or above.</param>
    /// <param name="trailerShare">Trailer's share of the whole mass, 0 to 1.</param>
    /// <param name="trailerWeight">N, zero or above.</param>
    /// <param name="most">Most that the brake gives, N, zero or above.</param>
    public double Slowing(double vehicleForce, double trailerShare, double trailerWeight, double most)
    {
        // The brake lessens the very push that works it, and slows the whole: B = c (share · (vehicle + B) − idle).
        double share = Within(trailerShare, 0, 1);
        return Finite(Math.Min(NotNegative(most), Math.Max(0, Shared * ((share * NotNegative(vehicleForce)) - Idle(trailerWeight)) / (1 - (Shared * share)))));
    }

    private double Shared => NotNegative(Gain) / (1 + Gain);

    private double Idle(double trailerWeight) => NotNegative(Threshold) * NotNegative(trailerWeight);
}

/// <summary>A trailer with overrun brakes behind its vehicle, on a road downhill.</summary>
/// <param name="Brake">How its brakes follow the push.</param>
/// <param name="MassShare">Of the whole mass, 0 to 1. What holds the rig back by itself, rolling and air, is taken to be shared alike.</param>
/// <param name="MostRatio">Most that its brakes give over its weight, zero or above.</param>
public readonly record struct OverrunTrailer(OverrunBrake Brake, double MassShare, double MostRatio)
{
    /// <summary>What the trailer holds back by itself, N, of what has to be held back in all.</summary>
    /// <param name="held">In all, N, zero or above.</param>
    /// <param name="mass">Of the whole rig, kg.</param>
    public double Force(double held, double mass)
    {
        double share = Within(MassShare, 0, 1), weight = share * mass * Constants.Gravity;
        return Brake.Force(share * held, weight, NotNegative(MostRatio) * weight);
    }
}
