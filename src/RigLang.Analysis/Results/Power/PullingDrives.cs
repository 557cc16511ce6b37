using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Power;

/// <summary>The vehicle's drive by the most that it gives at the wheels: by torque and gears where they are written, else by power alone.</summary>
internal static class PullingDrives
{
    // Motor to wheel: published motor maps name a gearbox of 0.98.
    private const double BatteryGearbox = 0.98;

    /// <summary>By torque and gears (or reduction) at its peak; missing where they aren't written.</summary>
    public static Computation<RigStudy, WheelDrive?> ByTorque { get; } = new("pull by torque and gears", (read, rig) =>
        Drives.Battery(rig) is { } battery ? Motors(read, rig, battery, ElectricFacts.MotorPower)
        : Drives.Engine(rig) is { } engine ? Geared(read, rig, engine)
        : Missing(read, rig));

    /// <summary>
    /// For hills that last: the motors at what they hold for half an hour, never at their peak; an engine as it is. By power alone where torque and gears aren't
    /// written, which is right for climbing.
    /// </summary>
    public static Computation<RigStudy, WheelDrive?> Lasting { get; } = new("pull that lasts", (read, rig) =>
    {
        if (Drives.Battery(rig) is { } battery)
        {
            return read.TryGet(ByTorque, rig, out _)
                ? Motors(read, rig, battery, ElectricFacts.MotorPowerLasting)
                : new PowerDrive(read.Quantity(battery, ElectricFacts.MotorPowerLasting) * BatteryGearbox);
        }

        return Drives.Engine(rig) is not { } engine ? Missing(read, rig)
            : read.TryGet(ByTorque, rig, out var geared) && geared is not null ? geared
            : new PowerDrive(read.Quantity(engine, CombustionFacts.EnginePower) * read.Quantity(engine, CombustionFacts.DrivelineEfficiency));
    });

    /// <summary>
    /// What a climb of a leg can count on: what lasts where it is known, else the peak, which <see cref="Drives.MarkPeak"/> marks once it matters; null where nothing
    /// is known.
    /// </summary>
    public static WheelDrive? Climbing(Reader read, RigStudy rig) =>
        read.TryGet(Lasting, rig, out var lasting) && lasting is not null ? lasting
        : read.TryGet(ByTorque, rig, out var peak) && peak is not null ? peak
        : read.GetIfKnown(Drives.WheelPower, rig) is { } power ? new PowerDrive(power)
        : null;

    /// <summary>Force at the wheels from rest, N: full torque in the lowest gear.</summary>
    public static Computation<RigStudy, double> FromRest { get; } = new("pull from rest", (read, rig) => read.Get(ByTorque, rig)?.Force(0) ?? double.NaN);

    /// <summary>Share of the drive's power that air of a density (kg/m³) leaves: all of it to motors; an engine's aspiration must be known.</summary>
    public static double ShareIn(Reader read, RigStudy rig, double density) => Drives.Engine(rig) is not { } engine
        ? 1
        : AltitudeLoss.Share(density, read.Word(engine, CombustionFacts.Aspiration) == "natural" ? Aspiration.Natural : Aspiration.Turbo);

    private static ElectricDrive Motors(Reader read, RigStudy rig, Block battery, Model.Declaring.FactDeclaration power) => new(
        read.Quantity(battery, ElectricFacts.MotorTorque), read.Quantity(battery, power), read.Quantity(battery, ElectricFacts.Reduction),
        read.Get(DrivenWheels.Radius, rig), BatteryGearbox, read.QuantityIfKnown(battery, ElectricFacts.MotorSpeed) ?? double.PositiveInfinity);

    private static WheelDrive? Geared(Reader read, RigStudy rig, Block engine)
    {
        var points = read.Lines(engine, CombustionFacts.TorquePoint)
            .Select(line => new TorquePoint(line.MeasureOf("speed")!.Value, line.MeasureOf("torque")!.Value)).OrderBy(point => point.Speed).ToList();
        double[] gears = [.. read.Lines(engine, CombustionFacts.Gear).Select(line => line.MeasureOf("ratio")!.Value)];
        if (points.Count == 0)
        {
            read.Need(engine, CombustionFacts.TorquePoint);
            return null;
        }

        if (gears.Length == 0)
        {
            read.Need(engine, CombustionFacts.Gear);
            return null;
        }

        var efficiency = read.Quantity(engine, CombustionFacts.DrivelineEfficiency);
        var curve = UpTo(read.QuantityIfKnown(engine, CombustionFacts.EngineSpeed), points);
        var geared = new GearedDrive([.. curve], gears, read.Quantity(engine, CombustionFacts.FinalDrive), read.Get(DrivenWheels.Radius, rig), efficiency);
        // Nothing pulls harder than its rated power, whatever the points of the curve come to.
        return read.QuantityIfKnown(engine, CombustionFacts.EnginePower) is { } power ? new CappedDrive(geared, power * efficiency) : geared;
    }

    /// <summary>The curve as far as the engine turns: cut there, or drawn on to there at the last point's power.</summary>
    private static List<TorquePoint> UpTo(double? highest, List<TorquePoint> points)
    {
        if (highest is not { } speed || points[^1] is not { Speed: > 0 } last || speed == last.Speed)
        {
            return points;
        }

        var kept = points.Where(point => point.Speed < speed).ToList();
        if (speed > last.Speed)
        {
            return [.. kept, new TorquePoint(speed, last.Torque * last.Speed / speed)];
        }

        var next = points[kept.Count];
        var torque = kept is [.., var before] ? before.Torque + ((next.Torque - before.Torque) * (speed - before.Speed) / (next.Speed - before.Speed)) : next.Torque;
        return [.. kept, new TorquePoint(speed, torque)];
    }

    private static WheelDrive? Missing(Reader read, RigStudy rig)
    {
        read.Need(rig.Vehicle, VehicleFacts.Electric);
        return null;
    }
}
