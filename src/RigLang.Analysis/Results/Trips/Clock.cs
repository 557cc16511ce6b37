using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>Time along a trip, in seconds since departure; as moments where the trip says when it departs.</summary>
public static class Clock
{
    private const double Day = 86_400;

    // No trip takes a century, and the calendar has more than that left.
    private const double Longest = 100 * 365.25 * 86_400;

    internal static Computation<LegSubject, double> LegTime { get; } = new("time of the leg", (read, leg) =>
        read.Get(Driving.MovingTime, leg) + (read.QuantityIfKnown(leg.Leg, LegFacts.Delay) ?? 0));

    internal static Computation<LegSubject, double> Departure { get; } = new("departure", (read, leg) =>
        leg.Before is not { } before ? 0 : before.Stop is { } stop ? read.Get(StopEnd!, stop) : read.Get(Arrival!, before));

    internal static Computation<LegSubject, double> Arrival { get; } = new("arrival", (read, leg) =>
    {
        leg.Trip.Walk(Arrival!, leg);
        return read.Get(Departure, leg) + read.Get(LegTime, leg);
    });

    /// <summary>The latest of: pause over, charging done with plugging and uncoupling, the time of <c>until</c>.</summary>
    internal static Computation<StopSubject, double> StopEnd { get; } = new("end of the stop", (read, stop) =>
    {
        var arrival = read.Get(Arrival, stop.Leg);
        var end = arrival + Math.Max(read.QuantityIfKnown(stop.Block, StopFacts.Pause) ?? 0, ChargingInAll(read, stop));
        if (read.LineIfWritten(stop.Block, StopFacts.Until)?.Value is not MomentValue { Moment: { Clock: not null } until })
        {
            return end;
        }

        if (Seconds(stop.Leg, until) is not { } seconds)
        {
            // Counted from the departure, and nobody says when that is.
            read.Need(stop.Trip.Block, TripFacts.Depart);
            return end;
        }

        return Math.Max(end, seconds);
    });

    /// <summary>Uncoupling, plugging in and charging, s. Nothing to charge takes no plugging in either.</summary>
    private static double ChargingInAll(Tracking.Reader read, StopSubject stop)
    {
        var uncoupling = read.QuantityIfKnown(stop.Block, StopFacts.Uncouple) ?? 0;
        if (Road.Drives.Battery(stop.Trip.Rig) is null || !read.IsWritten(stop.Block, StopFacts.Charger))
        {
            return uncoupling;
        }

        var charging = read.Get(Charging.Time, stop);
        return charging == 0 ? uncoupling : uncoupling + read.Quantity(stop.Block, StopFacts.Connect) + charging;
    }

    /// <summary>The moment so many seconds after departure, by the clock in force at the end of that leg's stop or, with <paramref name="onArrival"/>, on its arrival; null where the trip says no departure.</summary>
    public static Moment? At(LegSubject leg, double seconds, bool onArrival)
    {
        if (DepartureOf(leg.Trip) is not { } start || !(Math.Abs(seconds) < Longest))
        {
            return null;
        }

        var offset = OffsetAt(leg, onArrival);
        var shift = start.Offset is { } first && offset is { } now ? now - first : TimeSpan.Zero;
        return (start with { Offset = offset }).Plus(TimeSpan.FromSeconds(Math.Round(seconds)) + shift);
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

    /// <summary>
    /// Hours of every day in seconds since departure, by the clock of the place behind the leg or, with <paramref name="onArrival"/>, by the one in force on the
    /// way; null where the trip says no departure.
    /// </summary>
    internal static DailyWindow? Hours(LegSubject leg, Fact hours, bool onArrival)
    {
        if (DepartureOf(leg.Trip) is not { Clock: { } begin } start || hours.ClockOf("from") is not { } from || hours.ClockOf("to") is not { } to)
        {
            return null;
        }

        var shift = start.Offset is { } first && OffsetAt(leg, onArrival) is { } now ? now - first : TimeSpan.Zero;
        // From a clock time to the same the next day is all day.
        return new DailyWindow((from.ToTimeSpan() - begin.ToTimeSpan() - shift).TotalSeconds, to == from ? Day : (to - from).TotalSeconds);
    }

    /// <summary>The moment at which a leg is over, as a table shows it: by the clock still in force on arrival; without a departure the time since it.</summary>
    internal static string Write(LegSubject leg, double seconds, bool onArrival) =>
        At(leg, seconds, onArrival) is { } moment ? moment.ToString() : QuantityWriter.WriteDuration(seconds) + " after departure";

    /// <summary>The offset that the clock shows: the last <c>local-time</c> up to there, else that of departure. Nothing is counted from a clock that says none.</summary>
    private static TimeSpan? OffsetAt(LegSubject leg, bool onArrival) => onArrival ? leg.ClockBefore : leg.ClockAfter;
}
