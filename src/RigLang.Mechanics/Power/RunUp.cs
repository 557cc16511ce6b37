using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// A rig gaining speed from rest at full force, reckoned once and asked for any two speeds: time is the sum of m_eff dv over the force left, by the midpoint rule.
/// Shifting and a slipping clutch aren't counted.
/// </summary>
public sealed class RunUp
{
    private const int Steps = 240;

    private readonly double[] _times = new double[Steps + 1];
    private readonly double _step;

    /// <param name="load">The rig.</param>
    /// <param name="drive">Its drive.</param>
    /// <param name="top">Highest speed that will be asked for, m/s, above zero.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="tractionLimit">Most that the driven wheels hold, N; infinity where grip is plenty.</param>
    public RunUp(RoadLoad load, WheelDrive drive, double top, double density, double tractionLimit = double.PositiveInfinity)
    {
        _step = Positive(top) / Steps;
        double mass = load.EffectiveMass, time = 0;
        for (int i = 0; i < Steps; i++)
        {
            double speed = (i + 0.5) * _step;
            double left = Positive(Math.Min(drive.Force(speed), tractionLimit) - load.Force(speed, density));
            _times[i + 1] = time += mass * _step / left;
        }
    }

    /// <summary>Time from one speed to another, s; NaN if the rig does not get there, or beyond the highest speed reckoned.</summary>
    /// <param name="from">m/s, zero or above.</param>
    /// <param name="to">m/s, at least <paramref name="from"/>.</param>
    public double Time(double from, double to) => to >= from ? Finite(At(to) - At(from)) : double.NaN;

    private double At(double speed)
    {
        double place = NotNegative(speed) / _step;
        if (!(place <= Steps + 1e-9))
            return double.NaN;
        int below = Math.Min((int)place, Steps - 1);
        return _times[below] + ((place - below) * (_times[below + 1] - _times[below]));
    }
}
