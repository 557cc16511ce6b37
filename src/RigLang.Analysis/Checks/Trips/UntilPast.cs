using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A stop is to last until a moment that has gone by on arrival.</summary>
public sealed class UntilPast : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL708",
        Slug = "until-past",
        Severity = Severity.Warning,
        Summary = "A stop is to last until a moment that has gone by on arrival.",
        Why = "The line holds nothing back: the day is often the slip.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 08:00 +10:00
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    until 2026-10-03 08:30
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 08:00 +10:00
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    until 2026-10-04 08:30
            """),
        Fix = "Mend the date, or take the line out.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var stop in trip.Stops)
        {
            if (stop.Block.Find(StopFacts.Until) is { Value: MomentValue { Moment: var until } } line && Clock.Seconds(stop.Leg, until) is { } seconds
                && trip.Compute(LegResults.Arrival, stop.Leg) is { IsComputed: true } arrival && Limits.Exceeds(arrival.Value, seconds))
            {
                yield return Report(
                    trip, line.Place,
                    $"{stop.Leg.PlaceName} is reached {LegResults.Arrival.Write(stop.Leg, arrival.Value, DisplaySystem.Metric)}{Mark(arrival)}, when {until} has gone by; the stop isn't held any longer by it. Mend the date, or take the line out.");
            }
        }
    }
}
