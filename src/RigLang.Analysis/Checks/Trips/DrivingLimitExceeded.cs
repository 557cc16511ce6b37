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
        if (trip.Block.Find(TripFacts.DrivingLimit) is not { } line || line.MeasureOf("value") is not { } limit || trip.Compute(Days.OfTrip, trip) is not { Missing: null } days)
        {
            yield break;
        }

        var over = days.Value.Where(day => Limits.Exceeds(day.Driving, limit.Value)).Select(day => $"{new Moment(day.Date)} has {Duration(day.Driving)}").ToList();
        if (over.Count > 0)
        {
            yield return Report(trip, line.Place, $"{string.Join(", ", over)} of driving{Mark(days)}, more than {limit.Text}. Stay a night on the way, or set the limit that you mean.");
        }
    }
}
