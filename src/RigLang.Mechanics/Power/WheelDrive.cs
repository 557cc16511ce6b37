using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A drive by the most that it gives at the wheels.</summary>
public abstract record WheelDrive
{
    /// <summary>Largest force at the driven wheels, N, at a speed (m/s, zero or above); 0 above the drive's highest speed.</summary>
    public abstract double Force(double speed);

    /// <summary>Largest power at the wheels, W.</summary>
    public double Power(double speed) => Finite(speed * Force(speed));

    /// <summary>This drive with all its force multiplied, as by thin air.</summary>
    public WheelDrive Times(double share) => new ScaledDrive(this, share);

    private sealed record ScaledDrive(WheelDrive Drive, double Share) : WheelDrive
    {
        public override double Force(double speed) => Finite(Drive.Force(speed) * NotNegative(Share));
    }
}

/// <summary>A drive of which only the power is known, taken as available at every speed: right for climbing and merging, too good for starting.</summary>
/// <param name="WheelPower">At the wheels, W, zero or above.</param>
public sealed record PowerDrive(double WheelPower) : WheelDrive
{
    public override double Force(double speed) => Finite(NotNegative(WheelPower) / Positive(speed));
}

/// <summary>A drive that never gives more than a power, as an engine whose curve is told roughly.</summary>
/// <param name="Drive">The drive.</param>
/// <param name="WheelPower">At the wheels, W, zero or above.</param>
public sealed record CappedDrive(WheelDrive Drive, double WheelPower) : WheelDrive
{
    public override double Force(double speed)
    {
        double force = Drive.Force(speed);
        return speed > 0 ? Finite(Math.Min(force, NotNegative(WheelPower) / speed)) : force;
    }
}

/// <summary>Electric motors on one fixed reduction: full torque up to the speed where power limits it, then full power (field weakening).</summary>
/// <param name="Torque">Sum of the motors, N·m.</param>
/// <param name="MotorPower">Sum of the motors, W.</param>
/// <param name="Reduction">Motor turns per wheel turn, above zero.</param>
/// <param name="WheelRadius">Rolling radius, m, above zero.</param>
/// <param name="Efficiency">Motor shaft to wheel, above 0, to 1.</param>
/// <param name="HighestMotorSpeed">rad/s; infinity where none is known to matter.</param>
public sealed record ElectricDrive(
    double Torque, double MotorPower, double Reduction, double WheelRadius, double Efficiency = 0.98, double HighestMotorSpeed = double.PositiveInfinity) : WheelDrive
{
    public override double Force(double speed)
    {
        double motorSpeed = NotNegative(speed) * Positive(Reduction) / Positive(WheelRadius);
        if (motorSpeed > HighestMotorSpeed)
            return 0;
        double torque = motorSpeed > 0 ? Math.Min(NotNegative(Torque), NotNegative(MotorPower) / motorSpeed) : NotNegative(Torque);
        return Finite(torque * Reduction / WheelRadius * Positive(Within(Efficiency, 0, 1)));
    }
}

/// <summary>One point of an engine's full-load curve.</summary>
/// <param name="Speed">rad/s.</param>
/// <param name="Torque">N·m.</param>
public readonly record struct TorquePoint(double Speed, double Torque);

/// <summary>
/// An engine with gears, always in the gear that pulls most. Below the first point of the curve the clutch or converter slips and the first point's torque is
/// counted; what a converter adds to it is left out.
/// </summary>
public sealed record GearedDrive : WheelDrive
{
    private readonly PiecewiseLinear? _torque;
    private readonly double[] _forcePerTorque;
    private readonly double _radius;
    private readonly double _efficiency;

    /// <param name="curve">Full-load curve, speeds ascending.</param>
    /// <param name="gears">Ratios of the gearbox, each above zero.</param>
    /// <param name="finalDrive">Ratio of the axle, above zero.</param>
    /// <param name="wheelRadius">Rolling radius, m, above zero.</param>
    /// <param name="efficiency">Crank to wheel, above 0, to 1.</param>
    public GearedDrive(ReadOnlySpan<TorquePoint> curve, ReadOnlySpan<double> gears, double finalDrive, double wheelRadius, double efficiency)
    {
        double[] speeds = new double[curve.Length], torques = new double[curve.Length];
        for (int i = 0; i < curve.Length; i++)
            (speeds[i], torques[i]) = (Positive(curve[i].Speed), NotNegative(curve[i].Torque));
        _torque = PiecewiseLinear.IsLine(speeds, torques) && gears.Length > 0 ? new PiecewiseLinear(speeds, torques) : null;
        _forcePerTorque = new double[gears.Length];
        for (int i = 0; i < gears.Length; i++)
            _forcePerTorque[i] = Positive(gears[i]) * Positive(finalDrive);
        _radius = Positive(wheelRadius);
        _efficiency = Positive(Within(efficiency, 0, 1));
    }

    public override double Force(double speed)
    {
        if (_torque is null)
            return double.NaN;
        double best = 0, highest = _torque.X[^1];
        foreach (double ratio in _forcePerTorque)
        {
            double engineSpeed = NotNegative(speed) * ratio / _radius;
            double force = engineSpeed > highest ? 0 : _torque.At(engineSpeed) * ratio / _radius * _efficiency;
            best = double.IsNaN(force) ? double.NaN : Math.Max(best, force);
        }

        return Finite(best);
    }
}
