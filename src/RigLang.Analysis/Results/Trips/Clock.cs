using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>Time along a trip, in seconds since departure; as moments where the trip says when it departs.</summary>
public static class Clock
{
    internal static Computation<LegSubject, double> LegTime { get; } = new("time of the leg", (read, leg) =>
    {
        var delay = read.QuantityIfKnown(leg.Leg, LegFacts.Delay) ?? 0;
        var driven = leg.Study.Compute(Driving.Driven, leg);
        // Without climb and descent the way is still as long, and power isn't asked for.
        return delay + (driven.Missing is null ? read.Get(Driving.Driven, leg).Time : Driving.WayOf(leg).Distance(read) / read.Get(Driving.Wish, leg));
    });

    internal static Computation<LegSubject, double> Departure { get; } = new("departure", (read, leg) =>
        leg.Before is not { } before ? 0 : before.Stop is { } stop ? read.Get(StopEnd!, stop) : read.Get(Arrival!, before));

    internal static Computation<LegSubject, double> Arrival { get; } = new("arrival", (read, leg) => read.Get(Departure, leg) + read.Get(LegTime, leg));

    /// <summary>The latest of: pause over, charging done with plugging and uncoupling, the time of <c>until</c>.</summary>
    internal static Computation<StopSubject, double> StopEnd { get; } = new("end of the stop", (read, stop) =>
    {
        var arrival = read.Get(Arrival, stop.Leg);
        var end = arrival + (read.QuantityIfKnown(stop.Block, StopFacts.Pause) ?? 0);
        if (stop.Block.Find(StopFacts.Charger) is not null && read.GetIfKnown(Charging.Time, stop) is { } charging)
        {
            end = Math.Max(end, arrival + read.Quantity(stop.Block, StopFacts.Connect) + (read.QuantityIfKnown(stop.Block, StopFacts.Uncouple) ?? 0) + charging);
        }

        return read.LineIfWritten(stop.Block, StopFacts.Until)?.Value is MomentValue { Moment: var until } && Seconds(stop.Leg, until) is { } seconds ? Math.Max(end, seconds) : end;
    });

    /// <summary>The moment so many seconds after departure, by the clock in force at the end of that leg's stop or, with <paramref name="onArrival"/>, on its arrival; null where the trip says no departure.</summary>
    public static Moment? At(LegSubject leg, double seconds, bool onArrival)
    {
        if (DepartureOf(leg.Trip) is not { } start || !double.IsFinite(seconds))
        {
            return null;
        }

        var offset = OffsetAt(leg, onArrival);
        var shift = start.Offset is { } first && offset is { } now ? now - first : TimeSpan.Zero;
        return (start with { Offset = offset ?? start.Offset }).Plus(TimeSpan.FromSeconds(seconds) + shift);
    }

    /// <summary>When the trip departs.</summary>
    public static Moment? DepartureOf(TripStudy trip) => (trip.Block.Find(TripFacts.Depart)?.Value as MomentValue)?.Moment is { Clock: not null } moment ? moment : null;

    /// <summary>Seconds from departure to a moment written at the stop behind a leg; null where the trip says no departure.</summary>
    public static double? Seconds(LegSubject leg, Moment moment)
    {
        if (DepartureOf(leg.Trip) is not { } start || moment.Clock is not { } clock)
        {
            return null;
        }

        var local = moment.Date.ToDateTime(clock) - start.Date.ToDateTime(start.Clock!.Value);
        var offset = moment.Offset ?? OffsetAt(leg, onArrival: false);
        return (local - (start.Offset is { } first && offset is { } now ? now - first : TimeSpan.Zero)).TotalSeconds;
    }

    /// <summary>The offset that the clock shows: the last <c>local-time</c> up to there, else that of departure.</summary>
    private static TimeSpan? OffsetAt(LegSubject leg, bool onArrival)
    {
        for (var at = leg; at is not null; at = at.Before)
        {
            if ((at != leg || !onArrival) && at.Stop?.Block.Find(StopFacts.LocalTime)?.Value is OffsetValue { Offset: var offset })
            {
                return offset;
            }
        }

        return DepartureOf(leg.Trip)?.Offset;
    }
}
