using RigLang.Analysis.Studies;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Planning;

/// <summary>A trip solved. In a set of its own: what lists a trip's results needn't solve it.</summary>
public static class PlanResults
{
    public static ResultSet<TripStudy> Set { get; } = new(ResultScope.Trip);

    public static ResultDeclaration<TripStudy> FastestTime { get; } = Set.Add(
        "fastest-time", QuantityKinds.Time, "Could be done in", "from start to end when each leg's speed and each stop's charge are chosen to be there soonest; `riglang plan` shows the plan",
        "least total-time over leg speeds and charges, no arrival below reserve", "dynamic programme over the state of charge in steps of a fortieth of a percent, rounded down; unplugging at whole percents, speeds in steps of 5 km/h or 5 mph up to the lowest cap",
        (read, trip) => read.Get(Planning.Of, trip)?.Day.Arrival ?? double.NaN);
}
