using System.Collections.Immutable;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>What is in the battery or the tank along a leg, as shares of the whole; below zero is what was short.</summary>
/// <param name="AtEnd">On arrival.</param>
/// <param name="Lowest">Anywhere on the way, start and end included.</param>
/// <param name="LowestAt">m from the leg's start; NaN where the order of its hills isn't known.</param>
/// <param name="EmptyAt">m from the leg's start to where nothing is left; NaN where that doesn't happen or isn't known.</param>
internal readonly record struct LegCharge(double AtEnd, double Lowest, double LowestAt, double EmptyAt);

/// <summary>What is in the battery or the tank along a trip, as a share of the whole.</summary>
internal static class Charge
{
    /// <summary>Stretch by stretch out of the battery, with what its charge lets it take back where the order of the stretches is known.</summary>
    public static Computation<LegSubject, ImmutableArray<LegEnergy>> Battery { get; } = new("battery energy along the leg", (read, leg) =>
    {
        leg.Trip.Walk(Along!, leg);
        var (rig, driven, load) = (leg.Trip.Rig, read.Get(Driving.Driven, leg), read.Get(Driving.Load, leg));
        var drive = Drives.BatteryIn(read, rig, driven.Temperature);
        var isHeld = driven.Stretches.Any(stretch => load.Force(stretch.Speed, stretch.Density, stretch.Wind, stretch.Grade) < 0);
        var overrun = isHeld ? HoldingBack.Overrun(read, rig) : null;
        var wanted = driven.Stretches.Select(stretch => stretch.Length == 0 ? default : drive.Over(load, stretch, overrun)).ToArray();
        if (!read.HasMissing && Driving.WayOf(leg).IsOrdered && wanted.Any(energy => energy.Battery < 0) && read.GetIfKnown(AtStart!, leg) is { } charge)
        {
            var limit = new ChargeLimit(Charging.TakenWhileDriving(read, rig, driven.Temperature), Drives.UsableEnergy(read, rig));
            for (var i = 0; i < wanted.Length; i++)
            {
                (wanted[i], charge) = limit.Over(wanted[i], drive.Regeneration, charge);
            }
        }

        return [.. wanted];
    });

    /// <summary>The sum of it.</summary>
    public static Computation<LegSubject, LegEnergy> BatteryUse { get; } = new("battery energy of the leg", (read, leg) =>
        read.Get(Battery, leg).Aggregate(default(LegEnergy), (sum, energy) => sum + energy));

    public static Computation<LegSubject, FuelUse> FuelUse { get; } = new("fuel of the leg", (read, leg) =>
        read.Get(Drives.Combustion, leg.Trip.Rig) is { } drive
            ? drive.Over(read.Get(Driving.Load, leg), read.Get(Driving.Driven, leg).Stretches)
            : new FuelUse(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN));

    /// <summary>m³.</summary>
    public static Computation<LegSubject, double> FuelVolume { get; } = new("volume of the leg's fuel", (read, leg) =>
        Drives.VolumeOf(read, leg.Trip.Rig, read.Get(FuelUse, leg)));

    /// <summary>What of the whole a leg takes.</summary>
    public static Computation<LegSubject, double> Taken { get; } = new("share taken by the leg", (read, leg) =>
        Drives.Engine(leg.Trip.Rig) is null
            ? read.Get(BatteryUse, leg).Battery / Drives.UsableEnergy(read, leg.Trip.Rig)
            : read.Get(FuelVolume, leg) / read.Get(Drives.TankVolume, leg.Trip.Rig));

    public static Computation<LegSubject, double> AtStart { get; } = new("share at the leg's start", (read, leg) =>
        leg.Before is not { } before ? First(read, leg.Trip)
            : before.Stop is { } stop ? read.Get(AfterStop!, stop)
            : read.Get(AtEnd!, before));

    /// <summary>Piece by piece where their order is known: a pass may take more than the arrival shows, and a full battery takes nothing back.</summary>
    public static Computation<LegSubject, LegCharge> Along { get; } = new("share along the leg", (read, leg) =>
    {
        leg.Trip.Walk(Along!, leg);
        var start = read.Get(AtStart, leg);
        if (read.HasMissing || !Driving.WayOf(leg).IsOrdered)
        {
            var end = Math.Min(Math.Max(1, start), start - read.Get(Taken, leg));
            return new LegCharge(end, Math.Min(start, end), double.NaN, double.NaN);
        }

        var (now, at, driven) = (start, 0.0, read.Get(Driving.Driven, leg));
        var charge = new LegCharge(start, start, 0, start > 0 ? double.NaN : 0);
        foreach (var (stretch, taken) in driven.Stretches.Zip(TakenBy(read, leg, driven)))
        {
            var next = Math.Min(Math.Max(1, start), now - taken);
            if (double.IsNaN(charge.EmptyAt) && next <= 0)
            {
                charge = charge with { EmptyAt = at + (stretch.Length * now / (now - next)) };
            }

            (now, at) = (next, at + stretch.Length);
            charge = now < charge.Lowest ? charge with { Lowest = now, LowestAt = at } : charge;
        }

        return charge with { AtEnd = now };
    });

    public static Computation<LegSubject, double> AtEnd { get; } = new("share at the leg's end", (read, leg) => read.Get(Along, leg).AtEnd);

    /// <summary>What is aboard when the stop ends: charged or refuelled to the mark, never less than on arrival.</summary>
    public static Computation<StopSubject, double> AfterStop { get; } = new("share after the stop", (read, stop) =>
    {
        var arrival = read.Get(AtEnd, stop.Leg);
        if (Drives.Battery(stop.Trip.Rig) is not null)
        {
            return read.LineIfWritten(stop.Block, StopFacts.Charger) is null ? arrival : Math.Max(arrival, Math.Min(1, read.Quantity(stop.Block, StopFacts.ChargeTo)));
        }

        return read.LineIfWritten(stop.Block, StopFacts.RefuelTo)?.MeasureOf(Signature.ValueRole) is { } refuel
            ? Math.Max(arrival, Math.Min(1, Share(read, stop.Trip.Rig, refuel)))
            : arrival;
    });

    /// <summary>A level as a share of the tank, whichever way it is written.</summary>
    public static double Share(Reader read, RigStudy rig, Measure level) =>
        level.Kind == QuantityKinds.Volume ? level.Value / read.Get(Drives.TankVolume, rig) : level.Value;

    internal static double First(Reader read, TripStudy trip) =>
        Drives.Engine(trip.Rig) is null ? read.Quantity(trip.Block, TripFacts.StartCharge)
        : read.Line(trip.Block, TripFacts.StartFuel)?.MeasureOf(Signature.ValueRole) is { } level ? Share(read, trip.Rig, level)
        : double.NaN;

    /// <summary>Each stretch's share of the whole.</summary>
    private static IEnumerable<double> TakenBy(Reader read, LegSubject leg, DrivenLeg driven)
    {
        var (rig, load) = (leg.Trip.Rig, read.Get(Driving.Load, leg));
        if (Drives.Engine(rig) is null)
        {
            var whole = Drives.UsableEnergy(read, rig);
            return read.Get(Battery, leg).Select(energy => energy.Battery / whole);
        }

        var (engine, fuel, tank) = (read.Get(Drives.Combustion, rig), Drives.FuelOf(read, rig), read.Get(Drives.TankVolume, rig));
        return engine is null ? [] : driven.Stretches.Select(stretch => engine.Over(load, stretch).Volume(fuel) / tank);
    }
}
