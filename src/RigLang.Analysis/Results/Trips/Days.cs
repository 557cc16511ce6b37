using System.Collections.Immutable;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>A calendar day of a trip.</summary>
/// <param name="Date">By the clock in force while driving.</param>
/// <param name="Driving">s, delays included.</param>
public readonly record struct DayDriving(DateOnly Date, double Driving);

/// <summary>Driving by calendar days.</summary>
public static class Days
{
    private const double Day = 86_400;
    private const int MostDays = 1000;

    /// <summary>One for each day with driving, in order. Needs <c>depart</c>: without it no day begins or ends.</summary>
    public static Computation<TripStudy, ImmutableArray<DayDriving>> OfTrip { get; } = new("driving by days", (read, trip) =>
    {
        read.LineIfWritten(trip.Block, TripFacts.Depart);
        if (Clock.DepartureOf(trip) is not { Clock: not null })
        {
            read.Need(trip.Block, TripFacts.Depart);
            return [];
        }

        var legs = trip.Legs.Select(leg => (Arrival: read.Get(Clock.Arrival, leg), Time: read.Get(Clock.LegTime, leg), Leg: leg)).ToList();
        return read.HasMissing ? [] : Split(legs.Select(leg => (Clock.At(leg.Leg, leg.Arrival - leg.Time, onArrival: true), leg.Time)));
    });

    /// <summary>Drives by calendar days; empty where one isn't known.</summary>
    /// <param name="drives">When each is begun, and how long it takes, s.</param>
    internal static ImmutableArray<DayDriving> Split(IEnumerable<(Moment? Leaves, double Time)> drives)
    {
        var days = new SortedDictionary<DateOnly, double>();
        foreach (var (leaves, time) in drives)
        {
            if (leaves is not { Clock: { } left } departs || !(time < MostDays * Day))
            {
                return [];
            }

            // What is left of the day on leaving, then whole days, then the rest.
            var (date, until) = (departs.Date, Day - left.ToTimeSpan().TotalSeconds);
            for (var remaining = time; remaining > 0; (remaining, until) = (remaining - until, Day))
            {
                days[date] = days.GetValueOrDefault(date) + Math.Min(remaining, until);
                if (date == DateOnly.MaxValue)
                {
                    break;
                }

                date = date.AddDays(1);
            }
        }

        return [.. days.Select(day => new DayDriving(day.Key, day.Value))];
    }
}
