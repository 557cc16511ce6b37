using System.Collections.Immutable;
using RigLang.Analysis.Results.Braking;
using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>Downhill: what has to be held back, who does it, and how warm the brakes get.</summary>
internal static class HoldingBack
{
    /// <summary>A trailer that brakes by itself when it is held back; null for any other. Where no line tells its brakes, it is taken for one that doesn't, and marked.</summary>
    public static OverrunTrailer? Overrun(Reader read, RigStudy rig)
    {
        if (!rig.HasTrailer)
        {
            return null;
        }

        var brakes = read.WordIfKnown(rig.Trailer, TrailerFacts.Brakes);
        if (brakes is null)
        {
            read.StandIn(rig.Trailer, TrailerFacts.Brakes);
        }

        return brakes == "overrun"
            ? new OverrunTrailer(OverrunBrake.ByRegulation, read.Get(TrainMass.TrailerLoaded, rig) / read.Get(TrainMass.Whole, rig), read.Quantity(rig.Trailer, TrailerFacts.BrakeRatio))
            : null;
    }

    /// <summary>Stretch by stretch: what is held back, and by what.</summary>
    public static Computation<LegSubject, ImmutableArray<DescentEnergy>> Stretches { get; } = new("held back along the leg", (read, leg) =>
    {
        var (rig, driven, load) = (leg.Trip.Rig, read.Get(Driving.Driven, leg), read.Get(Driving.Load, leg));
        var isHeld = driven.Stretches.Any(stretch => load.Force(stretch.Speed, stretch.Density, stretch.Wind, stretch.Grade) < 0);
        var overrun = isHeld ? Overrun(read, rig) : null;
        if (Drives.Engine(rig) is { } engine)
        {
            var retarding = isHeld ? read.Quantity(engine, CombustionFacts.RetardingPower) : 0;
            return [.. driven.Stretches.Select(stretch => stretch.Length == 0 ? default : DescentEnergy.Of(load, stretch, 0, retarding, overrun))];
        }

        var battery = read.Get(Charge.Battery, leg);
        var share = Drives.BatteryIn(read, rig, driven.Temperature).Regeneration;
        return read.HasMissing || battery.Length != driven.Stretches.Length
            ? []
            : [.. driven.Stretches.Zip(battery, (stretch, energy) => stretch.Length == 0 ? default : DescentEnergy.Of(load, stretch, AtWheels(energy, share), 0, overrun))];
    });

    /// <summary>Over the whole leg.</summary>
    public static Computation<LegSubject, DescentEnergy> Whole { get; } = new("held back on the leg", (read, leg) =>
        read.Get(Stretches, leg).Aggregate(default(DescentEnergy), (sum, stretch) => sum + stretch));

    /// <summary>Share of the heat in the driver's brakes that the vehicle's own take: as the loads on braked wheels.</summary>
    public static Computation<RigStudy, double> VehicleShare { get; } = new("vehicle's share of braking", (read, rig) =>
    {
        if (!rig.HasTrailer || read.WordIfKnown(rig.Trailer, TrailerFacts.Brakes) is null or "none" or "overrun")
        {
            return 1;
        }

        var (vehicle, trailer) = (read.Get(TrainMass.VehicleLoaded, rig), read.Get(TrainMass.TrailerLoaded, rig));
        return read.TryGet(LoadStates.AsDriven, rig, out var loads) ? loads.Vehicle / loads.Total : vehicle / (vehicle + trailer);
    });

    public static Computation<LegSubject, WarmBrakes> VehicleBrakes { get; } = new("vehicle's brakes along the leg", (read, leg) =>
    {
        leg.Trip.Walk(VehicleBrakes!, leg);
        var share = read.Get(VehicleShare, leg.Trip.Rig);
        return Along(read, leg, VehicleBrakes!, read.Quantity(leg.Trip.Rig.Vehicle, VehicleFacts.BrakeMass), stretch => share * stretch.Brakes);
    });

    public static Computation<LegSubject, WarmBrakes> TrailerBrakes { get; } = new("trailer's brakes along the leg", (read, leg) =>
    {
        leg.Trip.Walk(TrailerBrakes!, leg);
        if (!leg.Trip.Rig.HasTrailer || Stops.IsTrailerBraked(read, leg.Trip.Rig) != true)
        {
            read.NotApplicable();
            return default;
        }

        var share = 1 - read.Get(VehicleShare, leg.Trip.Rig);
        return Along(read, leg, TrailerBrakes!, read.Quantity(leg.Trip.Rig.Trailer, TrailerFacts.BrakeMass), stretch => (share * stretch.Brakes) + stretch.Overrun);
    });

    private static double AtWheels(LegEnergy energy, double share) => energy.Recovered > 0 && energy.Time > 0 ? energy.Recovered / (share * energy.Time) : 0;

    /// <summary>As warm as ordinary use makes them at least, and as the leg before and the stop left them.</summary>
    private static WarmBrakes Along(Reader read, LegSubject leg, Computation<LegSubject, WarmBrakes> brakes, double mass, Func<DescentEnergy, double> heat)
    {
        var driven = read.Get(Driving.Driven, leg);
        var stretches = read.Get(Stretches, leg);
        var now = WarmBrakes.Starting(mass, BrakeHeat.Working);
        if (leg.Before is { } before && read.TryGet(brakes, before, out var left) && left.Temperature > now.Temperature)
        {
            var standing = before.Stop is { } stop ? read.GetIfKnown(StopResults.StopTime, stop) ?? 0 : 0;
            var cooled = left.After(0, standing, 0, driven.Temperature);
            now = WarmBrakes.Starting(mass, Math.Max(now.Temperature, cooled.Temperature));
        }

        if (stretches.Length != driven.Stretches.Length)
        {
            return WarmBrakes.Starting(mass, double.NaN);
        }

        for (var i = 0; i < stretches.Length; i++)
        {
            now = now.After(heat(stretches[i]), driven.Stretches[i].Time, driven.Stretches[i].Speed, driven.Temperature);
        }

        return now;
    }
}
