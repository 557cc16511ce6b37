using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>A leg driven: its stretches with the speed that was held on each, in the air that was there.</summary>
/// <param name="Stretches">In order.</param>
/// <param name="IsPowerShort">Somewhere the drive couldn't hold the wished speed.</param>
/// <param name="Temperature">Of the air, K, on the mean.</param>
/// <param name="EndAltitude">m.</param>
internal sealed record DrivenLeg(IReadOnlyList<RouteSegment> Stretches, bool IsPowerShort, double Temperature, double EndAltitude)
{
    public double Time => Stretches.Sum(stretch => stretch.Time);

    public double Distance => Stretches.Sum(stretch => stretch.Length);
}

/// <summary>Drives a leg: speed by wish, limit and power, stretch by stretch.</summary>
internal static class Driving
{
    /// <summary>Nobody crawls slower in the model; where even this can't be held the leg can't be driven.</summary>
    private const double Slowest = 2;

    public static Computation<LegSubject, double> StartAltitude { get; } = new("altitude where the leg begins", (read, leg) =>
    {
        if (read.QuantityIfKnown(leg.Leg, LegFacts.Journey.Altitude) is { } written)
        {
            return written;
        }

        if (WayOf(leg).StartOfTrack is { } track)
        {
            return track;
        }

        if (leg.Before is { } before && read.GetIfKnown(EndAltitude!, before) is { } end)
        {
            return end;
        }

        read.StandIn(leg.Leg, LegFacts.Journey.Altitude);
        return 0;
    });

    public static Computation<LegSubject, double> EndAltitude { get; } = new("altitude where the leg ends", (read, leg) =>
    {
        var pieces = WayOf(leg).Pieces(read, read.Get(StartAltitude, leg));
        return read.Get(StartAltitude, leg) + pieces.Sum(piece => piece.Length * Slope.Sine(piece.Grade));
    });

    /// <summary>Speed that the leg asks for where a section has none of its own, m/s: the lower of wish and limit.</summary>
    public static Computation<LegSubject, double> Wish { get; } = new("wished speed", (read, leg) =>
        Math.Min(
            read.QuantityIfKnown(leg.Leg, LegFacts.Journey.Speed) ?? read.Quantity(leg.Trip.Rig.Rig, RigFacts.Speed),
            read.QuantityIfKnown(leg.Leg, LegFacts.SpeedLimit) ?? double.PositiveInfinity));

    /// <summary>The road load on the leg's surface.</summary>
    public static Computation<LegSubject, RoadLoad> Load { get; } = new("road load on the leg", (read, leg) =>
    {
        var whole = read.Get(RoadLoads.Whole, leg.Trip.Rig);
        return read.WordIfKnown(leg.Leg, LegFacts.Journey.Surface) is { } surface ? whole with { Rolling = RoadLoads.On(read, leg.Trip.Rig, surface) } : whole;
    });

    public static Computation<LegSubject, DrivenLeg> Driven { get; } = new("leg driven", (read, leg) =>
    {
        var start = read.Get(StartAltitude, leg);
        var pieces = WayOf(leg).Pieces(read, start);
        var weather = Weather.Of(read, leg.Leg, LegFacts.Journey, start);
        var wish = read.Get(Wish, leg);
        var limit = read.QuantityIfKnown(leg.Leg, LegFacts.SpeedLimit) ?? double.PositiveInfinity;
        var load = read.Get(Load, leg);
        var power = Drives.LastingPower(read, leg.Trip.Rig);
        var isShort = false;
        var stretches = new List<RouteSegment>(pieces.Count);
        foreach (var piece in pieces)
        {
            var stretch = new RouteSegment(piece.Length, piece.Grade, Math.Min(piece.Wish ?? wish, limit), weather.DensityAt(piece.Altitude), weather.On(piece.Course));
            var held = Held(load, stretch, power);
            isShort |= held < stretch.Speed;
            stretches.Add(stretch with { Speed = held });
        }

        var end = start + pieces.Sum(piece => piece.Length * Slope.Sine(piece.Grade));
        return new DrivenLeg(stretches, isShort, weather.TemperatureAt((start + end) / 2), end);
    });

    public static Way WayOf(LegSubject leg) => new(leg.Leg, LegFacts.Journey, leg.Track);

    /// <summary>The wished speed, or the highest below it that the power holds on this grade.</summary>
    private static double Held(RoadLoad load, RouteSegment stretch, double? power)
    {
        if (power is not { } watts || !(load.Power(stretch.Speed, stretch.Density, stretch.Wind, stretch.Grade) > watts))
        {
            return stretch.Speed;
        }

        var held = Gradeability.HighestSpeed(load, new PowerDrive(watts), stretch.Grade, stretch.Density, stretch.Speed, stretch.Wind);
        return held >= Slowest ? held : double.NaN;
    }
}
