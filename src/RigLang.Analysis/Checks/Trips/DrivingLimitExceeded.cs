using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A day has more driving than the limit that the trip sets itself.</summary>
public sealed class DrivingLimitExceeded : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL707",
        Slug = "driving-limit-exceeded",
        Severity = Severity.Warning,
        Summary = "A day has more driving than `driving-limit`.",
        Why = "A tired driver is the likeliest thing to fail on a long day with a trailer.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 08:00 +10:00
                driving-limit 2 h
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 08:00 +10:00
                driving-limit 4 h
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Fix = "Put a night between, or set the limit that you mean.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (trip.Block.Find(TripFacts.DrivingLimit) is not { } line || line.MeasureOf("value") is not { } limit)
        {
            yield break;
        }

        var days = trip.Compute(Days.OfTrip, trip);
        var driving = trip.Compute(TripResults.DrivingTime, trip);
        var over = days.Value.Where(day => Limits.Exceeds(day.Driving, limit.Value)).Select(day => $"{new Moment(day.Date)} has {Duration(day.Driving)}").ToList();
        if (Clock.DepartureOf(trip) is null && IsWithinADay(trip) && driving.IsComputed && Limits.Exceeds(driving.Value, limit.Value))
        {
            over.Add($"The trip has {Duration(driving.Value)}");
        }

        if (over.Count > 0)
        {
            yield return Report(trip, line.Place, $"{string.Join(", ", over)} of driving{Mark(driving)}, more than {limit.Text}. Stay a night on the way, or set the limit that you mean.");
        }
    }

    /// <summary>Without a departure nobody knows where one day ends; a trip that is over within one is one day's driving all the same.</summary>
    private static bool IsWithinADay(TripStudy trip) => trip.Compute(TripResults.TotalTime, trip) is { IsComputed: true, Value: < 86_400 };
}
