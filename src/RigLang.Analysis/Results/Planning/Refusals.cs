using System.Collections.Immutable;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Planning;

/// <summary>Why a trip can't be done, in words: the leg that breaks it and by how much.</summary>
internal static class Refusals
{
    public static string Words(TripStudy trip, DayPlan day, IReadOnlyList<ImmutableArray<LegChoice>> legs, PlanRequest request)
    {
        if (day.BreakingLeg < 0)
        {
            return "the facts admit no plan";
        }

        var leg = trip.Legs[day.BreakingLeg];
        var from = leg.Before?.PlaceName ?? trip.StartName;
        if (day.Outcome == PlanOutcome.OutOfTime)
        {
            var fastest = legs[day.BreakingLeg].Where(choice => choice.Time > 0).MinBy(choice => choice.Time);
            return $"from {from} to {leg.PlaceName} takes {Duration(fastest.Time)} at {Speed(leg, fastest.Speed)}, {Duration(day.Lateness)} more than the driving-hours are long";
        }

        var slowest = legs[day.BreakingLeg].Where(choice => double.IsFinite(choice.Energy)).MinBy(choice => choice.Energy);
        var reserve = Reserve(trip, leg);
        return $"{leg.PlaceName} can't be reached: from {from} it takes {Energy(slowest.Energy)} even at {Speed(leg, slowest.Speed)}{reserve}, {Energy(day.Shortage)} more than can be aboard there";
    }

    private static string Reserve(TripStudy trip, LegSubject leg)
    {
        var isLast = leg.Index == trip.Legs.Length - 1;
        var line = isLast ? trip.Block.Find(TripFacts.ArriveWith) ?? trip.Block.Find(TripFacts.Reserve) : trip.Block.Find(TripFacts.Reserve);
        return line?.MeasureOf("value") is { } kept ? $" and with {kept.Text} kept" : "";
    }

    private static string Energy(double joules) => QuantityWriter.Write(joules, QuantityKinds.Energy, DisplaySystem.Metric);

    private static string Duration(double seconds) => QuantityWriter.WriteDuration(seconds);

    private static string Speed(LegSubject leg, double speed) => QuantityWriter.Write(speed, LegChoices.IsInMiles(leg) ? Units.MilePerHour : QuantityKinds.Speed.Metric, 0);
}
