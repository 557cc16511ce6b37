using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A gain of speed.</summary>
/// <param name="Time">s.</param>
/// <param name="Distance">m.</param>
public readonly record struct SpeedGain(double Time, double Distance)
{
    /// <summary>
    /// From one speed to another at full force: time is the sum of m_eff dv over the force left. NaN if the rig does not get there.
    /// </summary>
    /// <param name="load">The rig.</param>
    /// <param name="drive">Its drive.</param>
    /// <param name="from">m/s, zero or above.</param>
    /// <param name="to">m/s, at least <paramref name="from"/>.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="grade">Rise over run.</param>
    /// <param name="tractionLimit">Most that the driven wheels hold, N; infinity where grip is plenty.</param>
    public static SpeedGain Full(RoadLoad load, WheelDrive drive, double from, double to, double density, double grade = 0, double tractionLimit = double.PositiveInfinity)
    {
        double start = NotNegative(from), gain = NotNegative(to - from), mass = load.EffectiveMass;
        if (double.IsNaN(start + gain + mass) || !(tractionLimit > 0))
            return new SpeedGain(double.NaN, double.NaN);
        const int steps = 400;
        double step = gain / steps, time = 0, distance = 0;
        for (int i = 0; i < steps; i++)
        {
            double speed = start + ((i + 0.5) * step);
            double left = Positive(Math.Min(drive.Force(speed), tractionLimit) - load.Force(speed, density, default, grade));
            time += mass * step / left;
            distance += mass * step * speed / left;
        }

        return new SpeedGain(Finite(time), Finite(distance));
    }

    /// <summary>Mean power, W, that a mass (kg) needs to gain speed in a time without losses.</summary>
    public static double MeanPower(double mass, double from, double to, double time) => Finite(Positive(mass) * ((to * to) - (from * from)) / 2 / Positive(time));
}
