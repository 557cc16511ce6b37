using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A leg is driven outside the hours that the trip keeps for driving.</summary>
public sealed class OutsideDrivingHours : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL728",
        Slug = "outside-driving-hours",
        Severity = Severity.Warning,
        Summary = "A leg begins before or ends after the trip's `driving-hours`.",
        Why = "Who said so in a quiet hour had reasons: darkness, a trailer ban, children.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 16:00
                driving-hours 08:00 to 17:00
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 09:00
                driving-hours 08:00 to 17:00
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Fix = "Leave earlier, or stay: `until` at the stop before. `riglang plan` stays by itself.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (trip.Block.Find(TripFacts.DrivingHours) is not { } line)
        {
            yield break;
        }

        foreach (var leg in trip.Legs)
        {
            if (Clock.Hours(leg, line, onArrival: true) is not { IsAlways: false } hours || trip.Compute(LegResults.Arrival, leg) is not { IsComputed: true } arrival
                || trip.Compute(LegResults.Time, leg) is not { IsComputed: true } time)
            {
                continue;
            }

            var begin = arrival.Value - time.Value;
            var next = hours.Start(begin, time.Value);
            if (next > begin)
            {
                var advice = double.IsInfinity(next) ? "It is longer than they are: break it by a place." : "Leave earlier, or stay until they begin again.";
                yield return Report(
                    trip, PlaceOf(leg),
                    $"The leg to {leg.PlaceName} goes from {Clock.Write(leg, begin, onArrival: true)} to {Clock.Write(leg, arrival.Value, onArrival: true)}{Mark(arrival)}, outside the driving-hours {line.PlaceOf("from").Text} to {line.PlaceOf("to").Text}. {advice}") with
                {
                    Related = [new Related(line.Place, "the driving-hours")],
                };
            }
        }
    }
}
