using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>What a rig did after a steering pulse.</summary>
/// <param name="Step">Time between samples, s.</param>
/// <param name="PulseEnd">Number of the first sample after the pulse.</param>
/// <param name="Articulation">Articulation angle, rad, sample by sample.</param>
/// <param name="TrailerYawRate">rad/s, sample by sample.</param>
public sealed record PulseResponse(double Step, int PulseEnd, IReadOnlyList<double> Articulation, IReadOnlyList<double> TrailerYawRate);

/// <summary>A short steering pulse at constant speed, as the test of ISO 9815 gives it, driven on the linear single-track model.</summary>
public static class SteerPulse
{
    private const double Step = 0.005;

    /// <summary>The response to a half sine of steer. The classical Runge–Kutta method in steps of 5 ms, exact to eight digits here.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="speed">m/s, above zero.</param>
    /// <param name="steer">Height of the pulse at the front wheels, rad.</param>
    /// <param name="pulse">Length of the pulse, s, above zero.</param>
    /// <param name="duration">Whole time, s, up to 120.</param>
    /// <returns>Without samples if not computable.</returns>
    public static PulseResponse Drive(LateralRig rig, double speed, double steer = 0.02, double pulse = 0.4, double duration = 12)
    {
        double[] a = SingleTrackModel.System(rig, speed), b = SingleTrackModel.Steering(rig);
        int count = (int)(Within(duration, 0, 120) / Step);
        if (!Array.TrueForAll(a, double.IsFinite) || !Array.TrueForAll(b, double.IsFinite) || double.IsNaN(Positive(pulse) + Finite(steer)) || count < 1)
            return new PulseResponse(Step, 0, [], []);
        double Steer(double time) => time < pulse ? steer * Math.Sin(Math.PI * time / pulse) : 0;
        double[] articulation = new double[count], yawRate = new double[count];
        Span<double> x = stackalloc double[4], k1 = stackalloc double[4], k2 = stackalloc double[4], k3 = stackalloc double[4], k4 = stackalloc double[4], mid = stackalloc double[4];
        x.Clear();
        for (int i = 0; i < count; i++)
        {
            articulation[i] = Finite(x[3]);
            yawRate[i] = Finite(x[1] + x[2]);
            double time = i * Step;
            Rate(a, b, x, Steer(time), k1);
            Blend(x, k1, Step / 2, mid);
            Rate(a, b, mid, Steer(time + (Step / 2)), k2);
            Blend(x, k2, Step / 2, mid);
            Rate(a, b, mid, Steer(time + (Step / 2)), k3);
            Blend(x, k3, Step, mid);
            Rate(a, b, mid, Steer(time + Step), k4);
            for (int j = 0; j < 4; j++)
                x[j] += Step / 6 * (k1[j] + (2 * k2[j]) + (2 * k3[j]) + k4[j]);
        }

        return new PulseResponse(Step, (int)Math.Ceiling(pulse / Step), articulation, yawRate);
    }

    private static void Rate(ReadOnlySpan<double> a, ReadOnlySpan<double> b, ReadOnlySpan<double> x, double steer, Span<double> rate)
    {
        for (int row = 0; row < 4; row++)
            rate[row] = (a[row * 4] * x[0]) + (a[(row * 4) + 1] * x[1]) + (a[(row * 4) + 2] * x[2]) + (a[(row * 4) + 3] * x[3]) + (b[row] * steer);
    }

    private static void Blend(ReadOnlySpan<double> x, ReadOnlySpan<double> rate, double step, Span<double> result)
    {
        for (int j = 0; j < 4; j++)
            result[j] = x[j] + (step * rate[j]);
    }
}
