using System.Collections.Immutable;
using RigLang.Analysis.Results.Power;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Planning;

/// <summary>The ways to drive a leg among which a plan chooses: the lowest cap, and each round speed below it.</summary>
internal static class LegChoices
{
    /// <summary>No plan drives slower, however short it is of charge, unless a cap is lower still (our choice): 50 km/h, or 30 mph.</summary>
    private const double Slowest = 50 / 3.6;

    private const double Kilometres = 5 / 3.6, Miles = 5 * 0.44704;

    public static Computation<LegSubject, ImmutableArray<LegChoice>> Of { get; } = new("ways to drive the leg", (read, leg) =>
    {
        var caps = read.Get(SpeedCaps.OfLeg, leg);
        var road = Road(read, leg, caps.Length > 0 ? caps[0].Speed : double.NaN);
        var (load, battery) = (read.Get(Driving.Load, leg), Drives.BatteryIn(read, leg.Trip.Rig, road.Temperature));
        var overrun = road.Stretches.Any(stretch => stretch.Grade < 0) ? HoldingBack.Overrun(read, leg.Trip.Rig) : null;
        var delay = read.QuantityIfKnown(leg.Leg, LegFacts.Delay) ?? 0;
        var (capacity, reserve) = (Drives.UsableEnergy(read, leg.Trip.Rig), Reserve(read, leg));
        if (read.HasMissing)
        {
            return [];
        }

        var choices = ImmutableArray.CreateBuilder<LegChoice>();
        var isShort = false;
        foreach (var speed in Speeds(caps[0].Speed, IsInMiles(leg)))
        {
            var choice = Drive(road, speed, load, (stretch, at) => battery.Over(at, stretch, overrun), capacity, reserve, ref isShort);
            // Where sections or the drive allow no more, a higher speed is the same way to drive.
            if (choices.Count == 0 || choice.Time + delay > choices[^1].Time + 0.5)
            {
                choices.Add(choice with { Time = choice.Time + delay });
            }
        }

        if (isShort)
        {
            Drives.MarkPeak(read, leg.Trip.Rig);
        }

        return choices.ToImmutable();
    });

    /// <summary>Falling from the cap.</summary>
    internal static IEnumerable<double> Speeds(double cap, bool inMiles)
    {
        var step = inMiles ? Miles : Kilometres;
        var slowest = Math.Min(inMiles ? 6 * Miles : Slowest, cap);
        yield return cap;
        for (var count = Math.Ceiling((cap / step) - 1e-9) - 1; count * step > slowest - 1e-9; count--)
        {
            yield return count * step;
        }
    }

    internal static bool IsInMiles(LegSubject leg) =>
        (leg.Leg.Find(LegFacts.Journey.Speed) ?? leg.Trip.Block.Find(TripFacts.ComfortSpeed) ?? leg.Trip.Rig.Rig.Find(RigFacts.Speed))?.MeasureOf(Signature.ValueRole)?.Unit == Units.MilePerHour;

    /// <summary>The stretches in the air that is there, each with the most that may be driven on it and the share of the drive's force that its air leaves.</summary>
    private static RoadAhead Road(Reader read, LegSubject leg, double cap)
    {
        var (way, start) = (Driving.WayOf(leg), read.Get(Driving.StartAltitude, leg));
        var pieces = way.Pieces(read, start);
        var weather = Weather.Of(read, leg.Leg, LegFacts.Journey, start);
        var left = Drives.PowerLeft(read, leg.Trip.Rig);
        var stretches = new RouteSegment[pieces.Count];
        var shares = new double[pieces.Count];
        for (var index = 0; index < stretches.Length; index++)
        {
            var piece = pieces[index];
            var density = weather.DensityAt(piece.Altitude);
            stretches[index] = new RouteSegment(piece.Length, piece.Grade, Math.Min(piece.Wish ?? cap, cap), density, weather.On(piece.Course));
            shares[index] = left(density) * Driving.Spared;
        }

        return new RoadAhead(stretches, shares, PullingDrives.Climbing(read, leg.Trip.Rig), way.IsOrdered, weather.TemperatureAt(start + (way.NetRise(read) / 2)));
    }

    private static LegChoice Drive(RoadAhead road, double speed, RoadLoad load, Func<RouteSegment, RoadLoad, LegEnergy> over, double capacity, ReserveAsked reserve, ref bool isShort)
    {
        double time = 0, taken = 0, deepest = 0, least = 0, sinceFull = 0;
        for (var index = 0; index < road.Stretches.Length; index++)
        {
            var stretch = road.Stretches[index];
            var wish = Math.Min(stretch.Speed, speed);
            var held = Driving.Held(load, stretch with { Speed = wish }, road.Drive, road.Shares[index]);
            isShort |= !(held >= wish);
            var energy = over(stretch with { Speed = held }, load);
            time += energy.Time;
            taken += energy.Battery;
            if (road.IsOrdered)
            {
                deepest = Math.Max(deepest, taken);
                least = Math.Min(least, taken);
                sinceFull = taken - least;
            }
        }

        return new LegChoice(speed, time, taken) { Deepest = deepest, SinceFull = road.IsOrdered ? sinceFull : Math.Max(0, taken), Reserve = reserve.Share(taken / capacity) };
    }

    /// <summary>A reserve written as a distance counts at the pace of the leg.</summary>
    private static ReserveAsked Reserve(Reader read, LegSubject leg)
    {
        if (read.LineIfWritten(leg.Trip.Block, TripFacts.Reserve)?.MeasureOf(Signature.ValueRole) is not { } reserve)
        {
            return default;
        }

        return reserve.Kind == QuantityKinds.Distance
            ? new ReserveAsked(0, reserve.Value / read.Get(LegResults.Distance, leg))
            : new ReserveAsked(Charge.Share(read, leg.Trip.Rig, reserve), 0);
    }

    private sealed record RoadAhead(RouteSegment[] Stretches, double[] Shares, WheelDrive? Drive, bool IsOrdered, double Temperature);

    /// <summary>A share of the whole, or so many times what the leg takes.</summary>
    private readonly record struct ReserveAsked(double Fixed, double OfLeg)
    {
        public double Share(double taken) => Math.Min(1, Fixed + (OfLeg * Math.Max(0, taken)));
    }
}
