using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Editing.Reasons;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Showing;

/// <summary>A weighing: what it says of the hitch, then each pass against the model.</summary>
internal static class WeighingSheet
{
    public static IEnumerable<Section> Sections(WeighingStudy weighing, UnitChoice units)
    {
        yield return ResultRows.Of("From the passes", WeighingResults.Set.All, weighing, units);
        yield return ResultRows.Of("All readings together", WeighingFitResults.Set.All, weighing, units);
        foreach (var pass in weighing.Passes)
        {
            yield return new Section($"Pass {pass.Block.Key}", [.. pass.Readings.Select(reading => RowOf(reading, units))]);
        }
    }

    private static Row RowOf(ReadingSubject reading, UnitChoice units)
    {
        var read = ReadingResults.Read.Compute(reading)!;
        var model = ReadingResults.Model.Compute(reading)!;
        var gap = ReadingResults.Gap.Compute(reading)!;
        var value = units.Write(ReadingResults.Read, reading, read.Value);
        if (!gap.IsComputed)
        {
            return new Row(reading.Axles, value, model.Applies ? "by the model " + Shown.NotComputed(model) : "");
        }

        var words = $"{Cells.Tied(units.Write(ReadingResults.Gap, reading, Math.Abs(gap.Value)))} {(gap.Value < 0 ? "below" : "above")} the model's {Cells.Tied(units.Write(ReadingResults.Model, reading, model.Value))}";
        return new Row(reading.Axles, value, words + (model.IsEstimated ? ", " + Shown.Estimated : ""));
    }
}
