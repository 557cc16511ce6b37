using RigLang.Editing.Reasons;
using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;

namespace RigLang.Cli.Showing;

/// <summary>A trip in full: the whole, then leg by leg with the stop behind each.</summary>
internal static class TripSheet
{
    public static IEnumerable<Section> Sections(TripStudy trip, UnitChoice units)
    {
        yield return ResultRows.Of("The whole trip", TripResults.Set.All, trip, units);
        var days = trip.Compute(Days.OfTrip, trip);
        if (days.Missing is null && days.Value.Length > 1)
        {
            yield return new Section("Driving by day", [.. days.Value.Select(day => new Row($"{day.Date:yyyy-MM-dd}", units.Write(day.Driving, Quantities.QuantityKinds.Time)))]);
        }

        foreach (var leg in trip.Legs)
        {
            yield return ResultRows.Of($"Leg {leg.Leg.Key}{(leg.PlaceName == leg.Leg.Key ? "" : $"  {leg.PlaceName}")}", Catalogue.Of(ResultScope.Leg), leg, units);
            if (leg.Stop is { } stop)
            {
                yield return ResultRows.Of($"Stop {stop.Block.Key}", StopResults.Set.All, stop, units);
            }
        }
    }
}
