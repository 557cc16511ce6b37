using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A battery-electric drive: wheel work on one side, battery energy on the other.</summary>
/// <param name="DriveEfficiency">Battery to wheel, above 0, to 1.</param>
/// <param name="Regeneration">Wheel to battery, 0 to 1.</param>
/// <param name="RegenerationPower">Most that the battery takes while driving, W, zero or above; infinity for no limit.</param>
/// <param name="Auxiliary">Power of everything but the drive, W.</param>
public readonly record struct BatteryDrive(double DriveEfficiency, double Regeneration, double RegenerationPower, double Auxiliary)
{
    /// <summary>Energy of a steady stretch.</summary>
    /// <param name="load">The rig.</param>
    /// <param name="stretch">The road.</param>
    /// <param name="overrun">A trailer that brakes by itself when it is held back; null for any other.</param>
    public LegEnergy Over(RoadLoad load, RouteSegment stretch, OverrunTrailer? overrun = null)
    {
        double force = load.Force(stretch.Speed, stretch.Density, stretch.Wind, stretch.Grade), held = Math.Max(0, -force);
        double traction = Finite(Math.Max(0, force) * NotNegative(stretch.Length)), braking = Finite(held * stretch.Length);
        double own = overrun is { } trailer && held > 0 ? trailer.Force(held, load.Mass) * stretch.Length : 0;
        LegEnergy energy = FromWork(traction, braking - own, stretch.Length, stretch.Time);
        return energy with { Braking = braking, Brakes = energy.Brakes + own, Overrun = own };
    }

    /// <summary>Energy of a leg: the sum of its stretches. Changes of speed between them are left out; see <see cref="SpeedChange"/>.</summary>
    public LegEnergy Over(RoadLoad load, IReadOnlyList<RouteSegment> stretches)
    {
        LegEnergy sum = default;
        for (int i = 0; i < stretches.Count; i++)
        {
            // A stretch of no length adds nothing, whatever else is missing about it.
            if (stretches[i].Length != 0)
                sum += Over(load, stretches[i]);
        }

        return sum;
    }

    /// <summary>Energy of wheel work done and held back over a time, the power of regeneration taken as even.</summary>
    /// <param name="traction">Work at the wheels, J, zero or above.</param>
    /// <param name="braking">Work held back at the wheels, J, zero or above.</param>
    /// <param name="distance">m.</param>
    /// <param name="time">s.</param>
    public LegEnergy FromWork(double traction, double braking, double distance, double time)
    {
        double share = Within(Regeneration, 0, 1);
        double limit = double.IsPositiveInfinity(RegenerationPower) ? double.MaxValue : NotNegative(RegenerationPower) * NotNegative(time);
        double recovered = braking == 0 ? 0 : Math.Min(NotNegative(braking) * share, limit);
        double brakes = braking == 0 ? 0 : share == 0 ? braking : braking - (recovered / share);
        double auxiliary = Finite(NotNegative(Auxiliary) * time);
        double battery = (NotNegative(traction) / Positive(Within(DriveEfficiency, 0, 1))) - recovered + auxiliary;
        return new LegEnergy(Finite(battery), traction, Finite(recovered), Finite(brakes), braking, auxiliary, distance, time);
    }

    /// <summary>Energy of a change of speed (m/s) on top of the steady driving; braking within reach of regeneration.</summary>
    public LegEnergy SpeedChange(RoadLoad load, double from, double to)
    {
        double work = 0.5 * load.EffectiveMass * ((to * to) - (from * from));
        BatteryDrive unlimited = this with { RegenerationPower = double.MaxValue, Auxiliary = 0 };
        return unlimited.FromWork(Finite(Math.Max(0, work)), Finite(Math.Max(0, -work)), 0, 1);
    }

    /// <summary>Distance, m, that an energy (J) lasts at one steady pace; NaN when the pace gains energy.</summary>
    public double Range(double energy, RoadLoad load, RouteSegment pace)
    {
        double perDistance = Over(load, pace with { Length = 1 }).Battery;
        return Finite(NotNegative(energy) / Positive(perDistance));
    }

    /// <summary>Distance, m, that an energy (J) lasts while the drive gives a power (W at the wheels) at a speed, as when merging or climbing hard.</summary>
    public double RangeAtPower(double energy, double wheelPower, double speed) =>
        Finite(NotNegative(energy) * Positive(speed) / Positive((NotNegative(wheelPower) / Positive(Within(DriveEfficiency, 0, 1))) + NotNegative(Auxiliary)));
}
