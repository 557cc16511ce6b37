using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A stop is to charge or refuel to less than there is on arrival.</summary>
public sealed class ChargeToBelowArrival : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL705",
        Slug = "charge-to-below-arrival",
        Severity = Severity.Warning,
        Summary = "A stop is to charge or refuel to less than there is on arrival.",
        Why = "Nothing happens at the stop: perhaps the figure is a slip, perhaps the stop isn't needed.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 40 km
                    climb 0 m
                stop coast
                    charger 20 kW dc
                    charge-to 60 %
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 40 km
                    climb 0 m
                stop coast
                    charger 20 kW dc
                    charge-to 90 %
            """),
        Fix = "Charge to more, or leave the charger out.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var stop in trip.Stops)
        {
            var arrival = trip.Compute(Charge.AtEnd, stop.Leg);
            var goal = Drives.Engine(trip.Rig) is null ? stop.Block.Find(StopFacts.ChargeTo) : stop.Block.Find(StopFacts.RefuelTo);
            var share = trip.Compute(LevelAboveTank.GoalOf, stop);
            if (goal is not null && arrival.Applies && arrival.Missing is null && share.IsComputed && Limits.Exceeds(arrival.Value, share.Value))
            {
                yield return Report(
                    trip, goal.Place,
                    $"{stop.Leg.PlaceName} is reached with {Percent(arrival.Value)}{Mark(arrival)}, more than `{goal.Declaration.Keyword} {goal.PlaceOf("value").Text}`: nothing is taken on here. Take on more, or leave the line out.");
            }
        }
    }
}
