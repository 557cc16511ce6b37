using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>What is in the battery or the tank along a trip, as a share of the whole.</summary>
internal static class Charge
{
    public static Computation<LegSubject, LegEnergy> BatteryUse { get; } = new("battery energy of the leg", (read, leg) =>
    {
        var driven = read.Get(Driving.Driven, leg);
        return Drives.BatteryIn(read, leg.Trip.Rig, driven.Temperature).Over(read.Get(Driving.Load, leg), driven.Stretches);
    });

    /// <summary>m³.</summary>
    public static Computation<LegSubject, double> FuelVolume { get; } = new("fuel of the leg", (read, leg) =>
        read.Get(Drives.Combustion, leg.Trip.Rig) is { } drive
            ? drive.Over(read.Get(Driving.Load, leg), read.Get(Driving.Driven, leg).Stretches).Volume(Drives.FuelOf(read, leg.Trip.Rig))
            : double.NaN);

    /// <summary>What of the whole a leg takes.</summary>
    public static Computation<LegSubject, double> Taken { get; } = new("share taken by the leg", (read, leg) =>
    {
        var rig = leg.Trip.Rig;
        return Drives.Battery(rig) is not null ? read.Get(BatteryUse, leg).Battery / Drives.UsableEnergy(read, rig)
            : Drives.Engine(rig) is not null ? read.Get(FuelVolume, leg) / read.Get(Drives.TankVolume, rig)
            : read.NotApplicable();
    });

    public static Computation<LegSubject, double> AtStart { get; } = new("share at the leg's start", (read, leg) =>
        leg.Before is not { } before ? First(read, leg.Trip)
            : before.Stop is { } stop ? read.Get(AfterStop!, stop)
            : read.Get(AtEnd!, before));

    public static Computation<LegSubject, double> AtEnd { get; } = new("share at the leg's end", (read, leg) => read.Get(AtStart, leg) - read.Get(Taken, leg));

    /// <summary>What is aboard when the stop ends: charged or refuelled to the mark, never less than on arrival.</summary>
    public static Computation<StopSubject, double> AfterStop { get; } = new("share after the stop", (read, stop) =>
    {
        var arrival = read.Get(AtEnd, stop.Leg);
        if (Drives.Battery(stop.Trip.Rig) is not null)
        {
            return read.LineIfWritten(stop.Block, StopFacts.Charger) is null ? arrival : Math.Max(arrival, read.Quantity(stop.Block, StopFacts.ChargeTo));
        }

        return read.LineIfWritten(stop.Block, StopFacts.RefuelTo) is { } refuel
            ? Math.Max(arrival, Share(read, stop.Trip.Rig, refuel.MeasureOf(Signature.ValueRole)!))
            : arrival;
    });

    /// <summary>A level as a share of the tank, whichever way it is written.</summary>
    public static double Share(Reader read, RigStudy rig, Measure level) =>
        level.Kind == QuantityKinds.Volume ? level.Value / read.Get(Drives.TankVolume, rig) : level.Value;

    private static double First(Reader read, TripStudy trip)
    {
        if (Drives.Battery(trip.Rig) is not null)
        {
            return read.Quantity(trip.Block, TripFacts.StartCharge);
        }

        if (Drives.Engine(trip.Rig) is null)
        {
            return read.NotApplicable();
        }

        Fact? line = read.Line(trip.Block, TripFacts.StartFuel);
        return line?.MeasureOf(Signature.ValueRole) is { } level ? Share(read, trip.Rig, level) : double.NaN;
    }
}
