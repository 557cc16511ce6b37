using RigLang.Analysis.Results.Planning;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Cli.Planning;

/// <summary>What a person should know beside the times of a plan.</summary>
internal static class PlanNotes
{
    public static IEnumerable<string> Of(TripStudy trip, IReadOnlyList<PlanRow> plan)
    {
        foreach (var held in plan.Where(row => row.HeldBy is not null).GroupBy(row => row.HeldBy!.Words))
        {
            yield return $"Held by {held.Key}: {string.Join(", ", held.Select(row => row.Leg.PlaceName))}.";
        }

        if (plan.Where(row => row.HeldBy is null).Select(row => row.Leg.PlaceName).ToList() is { Count: > 0 } slower)
        {
            yield return $"Slower to save charge or charging: {string.Join(", ", slower)}.";
        }

        if (PlanTable.MissingForSteadiness(trip) is { } missing)
        {
            yield return $"Up to which speed the rig is steady isn't known, it needs {missing.Words}.";
        }

        if (trip.Block.Find(TripFacts.Reserve) is null)
        {
            yield return "No reserve is written: the plan arrives with an empty battery where that is sooner.";
        }

        foreach (var note in Times(trip, plan))
        {
            yield return note;
        }
    }

    private static IEnumerable<string> Times(TripStudy trip, IReadOnlyList<PlanRow> plan)
    {
        if (trip.Block.Find(TripFacts.DrivingLimit)?.MeasureOf(Signature.ValueRole) is { } limit)
        {
            foreach (var day in PlanTable.DaysOf(plan).Where(day => day.Driving > limit.Value + 30))
            {
                yield return $"{day.Date:yyyy-MM-dd} has {QuantityWriter.WriteDuration(day.Driving)} of driving, more than the driving-limit of {limit.Text}, which the plan doesn't keep by itself: write `until` where the night is spent.";
            }
        }

        var last = plan[^1];
        if (trip.Block.Find(TripFacts.ArriveBy)?.Value is MomentValue { Moment: var wish } && Clock.Seconds(last.Leg, wish) is { } wished && last.Arrives > wished + 30)
        {
            yield return $"Even so {last.Leg.PlaceName} is reached {QuantityWriter.WriteDuration(last.Arrives - wished)} after arrive-by.";
        }
    }
}
