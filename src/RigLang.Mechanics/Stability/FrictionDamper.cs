using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// A head that holds the trailer's turning with a constant friction torque. Over one swing it takes the energy of a viscous damper of 4 M/(π ω A), so it
/// helps small
/// swings most and says nothing without its amplitude.
/// </summary>
public static class FrictionDamper
{
    /// <summary>Viscous equivalent, N·m·s/rad.</summary>
    /// <param name="torque">Friction torque, N·m, zero or above.</param>
    /// <param name="frequency">Angular frequency of the swing, rad/s, above zero.</param>
    /// <param name="amplitude">Of the articulation, rad, above zero.</param>
    public static double Equivalent(double torque, double frequency, double amplitude) =>
        Finite(4 * NotNegative(torque) / (Math.PI * Positive(frequency) * Positive(amplitude)));

    /// <summary>A rig with its friction as viscous damping for one speed and amplitude; its own frequency is found with it.</summary>
    /// <remarks>A rig that no longer swings under so much damping keeps the damping of the frequency it had without.</remarks>
    public static LateralRig Apply(LateralRig rig, double speed, double torque, double amplitude)
    {
        if (torque == 0)
            return rig;
        LateralRig damped = rig;
        double frequency = SingleTrackModel.Modes(rig, speed).SwingFrequency;
        for (int i = 0; i < 8; i++)
        {
            damped = rig with { HitchDamping = rig.HitchDamping + Equivalent(torque, frequency, amplitude) };
            double next = SingleTrackModel.Modes(damped, speed).SwingFrequency;
            if (double.IsNaN(next) || Math.Abs(next - frequency) <= 1e-4 * frequency)
                break;
            frequency = next;
        }

        return damped;
    }
}
