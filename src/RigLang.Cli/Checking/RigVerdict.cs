using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Editing.Reasons;
using RigLang.Cli.Showing;
using RigLang.Cli.Terminals;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax;

namespace RigLang.Cli.Checking;

/// <summary>A rig in three lines: the tightest limit, the loads, the ratios.</summary>
internal static class RigVerdict
{
    public static IEnumerable<VerdictLine> Of(RigStudy rig, UnitChoice units)
    {
        yield return new VerdictLine("limits", Limits(rig, units));
        yield return new VerdictLine("loads", Listed(rig, units,
            (LoadResults.FrontAxleLoad, "front {0}"),
            (LoadResults.RearAxleLoad, "rear {0}"),
            (LoadResults.TrailerAxleLoad, "trailer axles {0}"),
            (LoadResults.TongueLoad, "tongue {0}")));
        if (rig.HasTrailer)
        {
            yield return new VerdictLine("ratios", Listed(rig, units,
                (RatioResults.TongueRatio, "tongue {0} of trailer"),
                (RatioResults.OverhangRatio, "overhang {0} of wheelbase"),
                (RatioResults.TrailerShare, "trailer {0} of vehicle"),
                (HitchResults.RestoredShare, "front axle {0} restored")));
        }

        if (Road(rig, units) is { Length: > 0 } road)
        {
            yield return new VerdictLine("road", road);
        }
    }

    /// <summary>Nothing for a rig whose vehicle says nothing of its drive, or that says no speed.</summary>
    private static string Road(RigStudy rig, UnitChoice units)
    {
        var range = RoadResults.LevelRange.Compute(rig)!;
        var per = new IResult[] { RoadResults.LevelEnergy, RoadResults.LevelFuel }.Select(result => (Result: result, Node: result.Compute(rig)!)).FirstOrDefault(pair => pair.Node.IsComputed);
        if (per.Node is null || !range.IsComputed || rig.Rig.Find(RigFacts.Speed)?.MeasureOf(Signature.ValueRole) is not { } speed)
        {
            return "";
        }

        return $"{Cells.Tied(units.Write(per.Result, rig, per.Node.Value))} and {Cells.Tied(units.Brief(RoadResults.LevelRange, rig, range.Value))} from full to empty, level and calm at {Cells.Tied(speed.Text)}{Shown.Mark(range)}";
    }

    private static Piece[] Limits(RigStudy rig, UnitChoice units)
    {
        var lines = RatingTable.Of(rig);
        var known = lines.Where(line => line.IsKnown).ToList();
        var open = lines.Where(line => !line.IsKnown).ToList();
        var unknown = open.Count switch { 0 => "", 1 => $"; not known: {Phrase.Small(open[0].Rating.Title)}", _ => $"; {open.Count} not known" };
        if (known.Count == 0)
        {
            return [lines is [{ Load.IsComputed: false } first, ..] ? Shown.NotComputed(first.Load) : "none is known"];
        }

        var tightest = $"{Phrase.Small(known[0].Rating.Title)} {Cells.Tied(Against(known[0], units))}";
        var over = known.Count(line => line.IsOver);
        return over == 0
            ? [new Piece($"room on {(unknown.Length == 0 ? "every one" : $"all {known.Count} known")}", Ink.Good), $"; tightest: {tightest}{unknown}"]
            : [new Piece($"over {(over == known.Count ? "every one" : $"{over} of {known.Count}")}", Ink.Error), $"; worst: {tightest}{unknown}"];
    }

    private static string Against(RatingLine line, UnitChoice units)
    {
        var limit = units.Write(line.Limit!.Value, line.Limit.Kind);
        var load = units.Write(line.Rating.Load, line.Load.Subject, line.Load.Value);
        var unit = limit[(limit.LastIndexOf(' ') + 1)..];
        var number = load.EndsWith(" " + unit, StringComparison.Ordinal) ? load[..^(unit.Length + 1)] : load;
        return $"{number} of {limit}{(line.IsEstimated ? " (estimated)" : "")}";
    }

    /// <summary>What can be computed, each as its phrase says; the first reason for what can't.</summary>
    private static Piece[] Listed(RigStudy rig, UnitChoice units, params (IResult Result, string Phrase)[] wanted)
    {
        var nodes = wanted.Select(pair => (pair.Phrase, pair.Result, Node: pair.Result.Compute(rig)!)).Where(pair => pair.Node.Applies).ToList();
        var words = nodes.Where(pair => pair.Node.IsComputed).Select(pair =>
            string.Format(null, pair.Phrase, Cells.Tied(units.Write(pair.Result, rig, pair.Node.Value))) + Shown.Mark(pair.Node)).ToList();
        if (nodes.Find(pair => !pair.Node.IsComputed) is { Node: { } missing })
        {
            words.Add(words.Count == 0 ? Shown.NotComputed(missing) : "others " + Shown.NotComputed(missing));
        }

        return [string.Join(", ", words)];
    }
}
