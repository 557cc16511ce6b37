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
        foreach (var row in TripTable.Of(trip))
        {
            var leg = row.Leg;
            yield return new Section(
                $"Leg {leg.Leg.Key}{Named(leg.PlaceName, leg.Leg.Key)}",
                [.. LegResults.Set.All.Select(result => With(ResultRows.Of(result, leg, units), result == LegResults.Arrival ? row.Arrives?.ToString() : null)).OfType<Row>()]);
            if (leg.Stop is { } stop)
            {
                yield return new Section(
                    $"Stop {stop.Block.Key}",
                    [.. StopResults.Set.All.Select(result => With(ResultRows.Of(result, stop, units), result == StopResults.StopTime && row.Leaves is { } leaves ? $"leaves {leaves}" : null)).OfType<Row>()]);
            }
        }
    }

    private static string Named(string place, string key) => place == key ? "" : $"  {place}";

    private static Row? With(Row? row, string? remark) =>
        row is null || remark is null ? row : row with { Remark = row.Remark.Length == 0 ? remark : $"{remark}, {row.Remark}" };
}
