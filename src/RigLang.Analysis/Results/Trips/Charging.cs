using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>Charging at a stop: the vehicle's curve under the post's limits.</summary>
internal static class Charging
{
    // Voltage of a pack, empty to full, where a post limits the current: the common 400 V class (our choice).
    private const double EmptyVoltage = 340;
    private const double FullVoltage = 410;

    /// <summary>What the battery takes over its charge.</summary>
    public static Computation<StopSubject, ChargingCurve?> Curve { get; } = new("charging curve at the stop", (read, stop) =>
    {
        if (Drives.Battery(stop.Trip.Rig) is not { } battery || read.LineIfWritten(stop.Block, StopFacts.Charger) is not { } post)
        {
            read.NotApplicable();
            return null;
        }

        var power = post.MeasureOf("power")!.Value;
        var points = read.Lines(battery, ElectricFacts.ChargePoint)
            .Select(point => new ChargePoint(point.MeasureOf("charge")!.Value, point.MeasureOf("power")!.Value)).OrderBy(point => point.Charge).ToArray();
        if (post.WordOf("kind") == "ac")
        {
            var aboard = read.Quantity(battery, ElectricFacts.AcPower);
            var level = ChargingCurve.Level(Math.Min(power, aboard) * Efficiency(read, stop));
            return points.Length == 0 ? level : ChargingCurve.Through(points).LimitedBy(level);
        }

        if (points.Length == 0)
        {
            read.Need(battery, ElectricFacts.ChargePoint);
            return null;
        }

        var curve = ChargingCurve.Through(points).LimitedTo(power);
        if (read.QuantityIfKnown(stop.Block, StopFacts.ChargerCurrent) is { } current)
        {
            read.StandIn(battery, ElectricFacts.ChargePoint);
            curve = curve.LimitedToCurrent(current, EmptyVoltage, FullVoltage);
        }

        return curve;
    });

    /// <summary>J into the battery.</summary>
    public static Computation<StopSubject, double> Energy { get; } = new("energy charged", (read, stop) =>
        read.Get(Curve, stop) is null ? double.NaN : (read.Get(Charge.AfterStop, stop) - read.Get(Charge.AtEnd, stop.Leg)) * Drives.UsableEnergy(read, stop.Trip.Rig));

    /// <summary>s on the plug.</summary>
    public static Computation<StopSubject, double> Time { get; } = new("time charging", (read, stop) =>
        read.Get(Curve, stop) is { } curve
            ? curve.Time(Drives.UsableEnergy(read, stop.Trip.Rig), Math.Max(0, read.Get(Charge.AtEnd, stop.Leg)), read.Get(Charge.AfterStop, stop))
            : double.NaN);

    /// <summary>Post to battery, as written or by the kind of post.</summary>
    public static double Efficiency(Reader read, StopSubject stop)
    {
        if (Drives.Battery(stop.Trip.Rig) is not { } battery)
        {
            return read.NotApplicable();
        }

        if (read.QuantityIfKnown(battery, ElectricFacts.ChargeEfficiency) is { } written)
        {
            return written;
        }

        read.StandIn(battery, ElectricFacts.ChargeEfficiency);
        return read.LineIfWritten(stop.Block, StopFacts.Charger)?.WordOf("kind") == "ac" ? BatteryDefaults.AcChargeEfficiency : BatteryDefaults.DcChargeEfficiency;
    }
}
