using System.Collections.Immutable;
using RigLang.Analysis.Results.Power;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>A leg driven: its stretches with the speed that was held on each, in the air that was there.</summary>
/// <param name="Stretches">As the way has them.</param>
/// <param name="SlowedLength">m on which the drive couldn't hold the wished speed.</param>
/// <param name="SlowestSpeed">m/s, of those; NaN where the rig can't move at all.</param>
/// <param name="Temperature">Of the air, K, on the mean.</param>
internal sealed record DrivenLeg(ImmutableArray<RouteSegment> Stretches, double SlowedLength, double SlowestSpeed, double Temperature)
{
    /// <summary>Somewhere the drive couldn't hold the wished speed.</summary>
    public bool IsPowerShort => SlowedLength > 0;

    public double Time => Stretches.Sum(stretch => stretch.Time);
}

/// <summary>Drives a leg: speed by wish, limit and power, stretch by stretch.</summary>
internal static class Driving
{
    /// <summary>Nobody crawls slower in the model; where even this can't be held the leg can't be driven.</summary>
    private const double Slowest = 2;

    /// <summary>A hair less than there is, so that rounding doesn't ask an engine for more than it has.</summary>
    internal const double Spared = 1 - 1e-9;

    /// <summary>As written, the track's first height, where the leg before ended, else the sea, marked. m.</summary>
    public static Computation<LegSubject, double> StartAltitude { get; } = new("altitude where the leg begins", (read, leg) =>
    {
        if (read.QuantityIfKnown(leg.Leg, LegFacts.Journey.Altitude) is { } written)
        {
            return written;
        }

        if (WayOf(leg).StartOfTrack is { } track)
        {
            read.LineIfWritten(leg.Leg, LegFacts.Journey.Gpx);
            return track;
        }

        leg.Trip.Walk(EndAltitude!, leg);
        // A leg whose hills nobody tells still began somewhere.
        if (leg.Before is { } before && (read.GetIfKnown(EndAltitude!, before) ?? read.GetIfKnown(StartAltitude!, before)) is { } end)
        {
            return end;
        }

        read.StandIn(leg.Leg, LegFacts.Journey.Altitude);
        return 0;
    });

    public static Computation<LegSubject, double> EndAltitude { get; } = new("altitude where the leg ends", (read, leg) => read.Get(StartAltitude, leg) + WayOf(leg).NetRise(read));

    /// <summary>Speed that the leg asks for where a section has none of its own, m/s: the lower of wish and limit.</summary>
    public static Computation<LegSubject, double> Wish { get; } = new("wished speed", (read, leg) =>
    {
        var own = read.QuantityIfKnown(leg.Leg, LegFacts.Journey.Speed);
        if (own is null && read.IsWritten(leg.Leg, LegFacts.Journey.Speed))
        {
            // Asked for with a question mark: the rig's usual speed stands in until there is an answer.
            read.StandIn(leg.Leg, LegFacts.Journey.Speed);
        }

        return Math.Min(own ?? read.QuantityIfKnown(leg.Trip.Rig.Rig, RigFacts.Speed) ?? read.Quantity(leg.Leg, LegFacts.Journey.Speed), LimitOn(read, leg));
    });

    /// <summary>The road load on the leg's surface.</summary>
    public static Computation<LegSubject, RoadLoad> Load { get; } = new("road load on the leg", (read, leg) =>
    {
        var whole = read.Get(RoadLoads.Whole, leg.Trip.Rig);
        return read.WordIfKnown(leg.Leg, LegFacts.Journey.Surface) is { } surface ? whole with { Rolling = RoadLoads.On(read, leg.Trip.Rig, surface) } : whole;
    });

    /// <summary>The stretches at the speeds wished, in the air that is there, whatever the drive can do.</summary>
    public static Computation<LegSubject, ImmutableArray<RouteSegment>> Wished { get; } = new("leg as wished", (read, leg) =>
    {
        var start = read.Get(StartAltitude, leg);
        var pieces = WayOf(leg).Pieces(read, start);
        var weather = Weather.Of(read, leg.Leg, LegFacts.Journey, start);
        var wish = pieces.All(piece => piece.Wish is not null) ? double.NaN : read.Get(Wish, leg);
        var limit = LimitOn(read, leg);
        var stretches = ImmutableArray.CreateBuilder<RouteSegment>(pieces.Count);
        foreach (var piece in pieces)
        {
            stretches.Add(new RouteSegment(piece.Length, piece.Grade, Math.Min(piece.Wish ?? wish, limit), weather.DensityAt(piece.Altitude), weather.On(piece.Course)));
        }

        return stretches.MoveToImmutable();
    });

    public static Computation<LegSubject, DrivenLeg> Driven { get; } = new("leg driven", (read, leg) =>
    {
        var wished = read.Get(Wished, leg);
        var load = read.Get(Load, leg);
        var drive = PullingDrives.Climbing(read, leg.Trip.Rig);
        var left = Drives.PowerLeft(read, leg.Trip.Rig);
        var stretches = ImmutableArray.CreateBuilder<RouteSegment>(wished.Length);
        double slowed = 0, slowest = double.PositiveInfinity;
        foreach (var stretch in wished)
        {
            var held = Held(load, stretch, drive, left(stretch.Density) * Spared);
            if (!(held >= stretch.Speed))
            {
                slowed += stretch.Length;
                slowest = Math.Min(slowest, held);
            }

            stretches.Add(stretch with { Speed = held });
        }

        if (slowed > 0)
        {
            Drives.MarkPeak(read, leg.Trip.Rig);
        }

        var start = read.Get(StartAltitude, leg);
        var weather = Weather.Of(read, leg.Leg, LegFacts.Journey, start);
        return new DrivenLeg(stretches.MoveToImmutable(), slowed, slowest, weather.TemperatureAt(start + (WayOf(leg).NetRise(read) / 2)));
    });

    /// <summary>s on the move, delays left out.</summary>
    public static Computation<LegSubject, double> MovingTime { get; } = new("time on the move", (read, leg) =>
    {
        // Whether power runs out rests on weather and masses. Where it doesn't, the time rests on neither, and isn't marked as estimated with them; where they
        // aren't known at all, the way is still as long.
        if (read.Consider(Driven, leg) is { Missing: null, Value.IsPowerShort: true })
        {
            return read.Get(Driven, leg).Time;
        }

        var way = WayOf(leg);
        if (way.Form != WayForm.Sections)
        {
            return way.Distance(read) / read.Get(Wish, leg);
        }

        var sections = way.Sections(read);
        var wish = sections.All(section => section.Speed is not null) ? double.NaN : read.Get(Wish, leg);
        var limit = LimitOn(read, leg);
        return sections.Sum(section => section.Length / Math.Min(section.Speed ?? wish, limit));
    });

    /// <summary>The highest speed that the leg asks for anywhere, m/s.</summary>
    public static Computation<LegSubject, double> Fastest { get; } = new("highest speed wished", (read, leg) =>
    {
        var way = WayOf(leg);
        if (way.Form != WayForm.Sections)
        {
            return read.Get(Wish, leg);
        }

        var limit = LimitOn(read, leg);
        var sections = way.Sections(read);
        var own = sections.Where(section => section.Speed is not null).Select(section => Math.Min(section.Speed!.Value, limit)).DefaultIfEmpty(0).Max();
        return sections.All(section => section.Speed is not null) && own > 0 ? own : Math.Max(own, read.Get(Wish, leg));
    });

    public static Way WayOf(LegSubject leg) => new(leg.Leg, LegFacts.Journey, leg.Track);

    internal static double LimitOn(Reader read, LegSubject leg) => read.QuantityIfKnown(leg.Leg, LegFacts.SpeedLimit) ?? double.PositiveInfinity;

    /// <summary>The wished speed, or the highest below it that this share of the drive's force holds on this grade; NaN where none is.</summary>
    internal static double Held(RoadLoad load, RouteSegment stretch, WheelDrive? drive, double share)
    {
        if (drive is null || !(load.Force(stretch.Speed, stretch.Density, stretch.Wind, stretch.Grade) > drive.Force(stretch.Speed) * share))
        {
            return stretch.Speed;
        }

        var held = Gradeability.HighestSpeed(load, drive.Times(share), stretch.Grade, stretch.Density, stretch.Speed, stretch.Wind);
        return held >= Slowest ? held : double.NaN;
    }
}
