using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>Charging at a stop: the vehicle's curve under the post's limits. Powers are into the battery.</summary>
internal static class Charging
{
    // A pack's voltage rises by about a fifth from empty to full; the fact says the middle (our choice).
    private const double EmptyShare = 0.9;
    private const double FullShare = 1.1;

    /// <summary>Where the vehicle's points end short of full, a tenth of the highest power is left at full (our choice).</summary>
    private const double LeftAtFull = 0.1;

    /// <summary>More than any battery takes, W.</summary>
    private const double NoLimit = 1e9;

    /// <summary>What the battery takes over its charge.</summary>
    public static Computation<StopSubject, ChargingCurve?> Curve { get; } = new("charging curve at the stop", (read, stop) =>
    {
        if (Drives.Battery(stop.Trip.Rig) is not { } battery || Post(read, stop) is not { } post)
        {
            read.NotApplicable();
            return null;
        }

        var points = Points(read, battery);
        // Whatever lies outside the points and is charged through is marked.
        if (!post.IsAlternating && points is [var first, ..] && (read.Get(Charge.AfterStop, stop) > points[^1].Charge || OnPlug(read, stop) < first.Charge))
        {
            read.StandIn(battery, ElectricFacts.ChargePoint);
        }

        return CurveAt(read, stop, battery, post);
    });

    /// <summary>The post of the <c>charger</c> line; null without one.</summary>
    public static ChargingPost? Post(Reader read, StopSubject stop) => read.LineIfWritten(stop.Block, StopFacts.Charger) is { } line
        ? new ChargingPost(line.MeasureOf("power")!.Value, line.WordOf("kind") == "ac", read.QuantityIfKnown(stop.Block, StopFacts.ChargerCurrent))
        : null;

    /// <summary>
    /// What a battery takes at a post. Below the first of its points the power stays as it is there; beyond the last it falls straight to a tenth of the highest.
    /// </summary>
    public static ChargingCurve? CurveAt(Reader read, StopSubject stop, Block battery, ChargingPost post)
    {
        var points = Points(read, battery);
        var efficiency = EfficiencyOf(read, battery, post.IsAlternating);
        if (post.IsAlternating)
        {
            var level = ChargingCurve.Level(Math.Min(post.Power, read.Quantity(battery, ElectricFacts.AcPower)) * efficiency);
            return points.Length == 0 ? level : ChargingCurve.Through(points).LimitedBy(level);
        }

        if (points.Length == 0)
        {
            read.Need(battery, ElectricFacts.ChargePoint);
            return null;
        }

        // No line tells the battery's own temperature: it is taken to be as cold as the air on the way there.
        var cold = read.QuantityIfKnown(stop.Leg.Leg, LegFacts.Journey.Air) is { } air ? Drives.ColdCharging(read, battery, air) : 1;
        var curve = ChargingCurve.Through(WithEnd(points)).Scaled(cold).LimitedTo(post.Power * efficiency);
        if (post.Current is { } current)
        {
            var voltage = read.Quantity(battery, ElectricFacts.BatteryVoltage);
            curve = curve.LimitedToCurrent(current, EmptyShare * voltage, FullShare * voltage);
        }

        return curve;
    }

    /// <summary>J into the battery.</summary>
    public static Computation<StopSubject, double> Energy { get; } = new("energy charged", (read, stop) =>
        read.Get(Curve, stop) is null ? double.NaN : (read.Get(Charge.AfterStop, stop) - OnPlug(read, stop)) * Drives.UsableEnergy(read, stop.Trip.Rig));

    /// <summary>J by the post's meter.</summary>
    public static Computation<StopSubject, double> Bought { get; } = new("energy from the post", (read, stop) => read.Get(Energy, stop) / Efficiency(read, stop));

    /// <summary>s on the plug.</summary>
    public static Computation<StopSubject, double> Time { get; } = new("time charging", (read, stop) =>
        read.Get(Curve, stop)?.Time(Drives.UsableEnergy(read, stop.Trip.Rig), OnPlug(read, stop), read.Get(Charge.AfterStop, stop)) ?? double.NaN);

    /// <summary>Post to battery, as written or by the kind of post.</summary>
    public static double Efficiency(Reader read, StopSubject stop)
    {
        if (Drives.Battery(stop.Trip.Rig) is not { } battery)
        {
            return read.NotApplicable();
        }

        return EfficiencyOf(read, battery, read.LineIfWritten(stop.Block, StopFacts.Charger)?.WordOf("kind") == "ac");
    }

    /// <summary>The <c>charge-point</c> lines by their charge. Of two for one charge the lower counts.</summary>
    public static ChargePoint[] Points(Reader read, Block battery) =>
    [
        .. read.Lines(battery, ElectricFacts.ChargePoint).Select(point => new ChargePoint(point.MeasureOf("charge")!.Value, point.MeasureOf("power")!.Value))
            .GroupBy(point => point.Charge).Select(group => group.MinBy(point => point.Power)).OrderBy(point => point.Charge),
    ];

    /// <summary>
    /// What the battery takes over its charge on a long descent: no more than a post could give it. Where nobody says, anything until it is full; regeneration's own
    /// limit comes on top.
    /// </summary>
    public static ChargingCurve TakenWhileDriving(Reader read, RigStudy rig, double temperature)
    {
        if (Drives.Battery(rig) is not { } battery || Points(read, battery) is not { Length: > 0 } points || !ChargingCurve.Through(WithEnd(points)).IsComputable)
        {
            return ChargingCurve.Level(NoLimit);
        }

        return ChargingCurve.Through(WithEnd(points)).Scaled(Drives.ColdCharging(read, battery, temperature));
    }

    /// <summary>A car that was flat when it rolled up to the post is charged from empty.</summary>
    private static double OnPlug(Reader read, StopSubject stop) => Math.Max(0, read.Get(Charge.AtEnd, stop.Leg));

    private static double EfficiencyOf(Reader read, Block battery, bool isAlternating)
    {
        if (read.QuantityIfKnown(battery, ElectricFacts.ChargeEfficiency) is { } written)
        {
            return written;
        }

        read.StandIn(battery, ElectricFacts.ChargeEfficiency);
        return isAlternating ? BatteryDefaults.AcChargeEfficiency : BatteryDefaults.DcChargeEfficiency;
    }

    private static ChargePoint[] WithEnd(ChargePoint[] points) =>
        points[^1] is { Charge: < 1 } last ? [.. points, new ChargePoint(1, Math.Min(last.Power, LeftAtFull * points.Max(point => point.Power)))] : points;
}

/// <summary>A post to charge at.</summary>
/// <param name="Power">By its meter, W.</param>
/// <param name="IsAlternating">Whether it gives alternating current, which the vehicle's own charger turns.</param>
/// <param name="Current">Its limit, A; null where nobody says one.</param>
internal sealed record ChargingPost(double Power, bool IsAlternating, double? Current);
