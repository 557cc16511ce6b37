using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A stop charges or refuels when the place is closed.</summary>
public sealed class ChargesWhileClosed : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL727",
        Slug = "charges-while-closed",
        Severity = Severity.Warning,
        Summary = "A stop charges or refuels when the place is closed.",
        Why = "Behind a barrier that is down the night is long, and the range is what is left.",
        Bad = TripExample.Electric(Stopping("open 06:00 to 10:00")),
        Good = TripExample.Electric(Stopping("open 06:00 to 22:00")),
        Fix = "Leave earlier, charge elsewhere, or stay until it opens. `riglang plan` waits for it by itself.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var stop in trip.Stops)
        {
            if (stop.Block.Find(StopFacts.Open) is not { } open || Clock.Hours(stop.Leg, open, onArrival: false) is not { IsAlways: false } hours
                || trip.Compute(LegResults.Arrival, stop.Leg) is not { IsComputed: true } arrival || Busy(trip, stop) is not { } time)
            {
                continue;
            }

            var begin = hours.Start(arrival.Value, time);
            if (begin <= arrival.Value)
            {
                continue;
            }

            var until = time > 0 ? $" and is busy until {Clock.Write(stop.Leg, arrival.Value + time, onArrival: false)}" : "";
            var advice = double.IsInfinity(begin) ? "So long it is never open: charge less there, or elsewhere." : $"Be there {Duration(begin - arrival.Value)} later, at another place, or earlier.";
            yield return Report(
                trip, open.Place,
                $"{stop.Leg.PlaceName} is reached {Clock.Write(stop.Leg, arrival.Value, onArrival: true)}{Mark(arrival)}{until}; it is open {open.PlaceOf("from").Text} to {open.PlaceOf("to").Text}. {advice}");
        }
    }

    /// <summary>How long the place is needed, s; null where nothing is charged or refuelled, or nobody knows.</summary>
    private static double? Busy(TripStudy trip, StopSubject stop)
    {
        if (trip.Compute(StopResults.ChargeTime, stop) is { IsComputed: true, Value: > 0 and var charging })
        {
            return charging;
        }

        return trip.Compute(StopResults.FuelTaken, stop) is { IsComputed: true, Value: > 0 } ? 0 : null;
    }

    private static string Stopping(string open) => $"""
        trip out
            rig solo
            start home
            depart 2026-10-03 08:00
            start-charge 60 %
            leg mill
                distance 150 km
                climb 0 m
            stop mill
                charger 100 kW dc
                charge-to 80 %
                {open}
            leg coast
                distance 60 km
                climb 0 m
        """;
}
