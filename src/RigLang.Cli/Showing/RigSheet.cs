using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Braking;
using RigLang.Analysis.Results.Power;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Studies;
using RigLang.Editing.Reasons;
using RigLang.Cli.Terminals;
using RigLang.Syntax;

namespace RigLang.Cli.Showing;

/// <summary>A rig's results by topic: the room to each limit first.</summary>
internal static class RigSheet
{
    /// <summary>In the order in which they are shown; a result of a rig that no topic names comes last, so none is lost.</summary>
    public static IReadOnlyList<(string Title, IReadOnlyList<IResult> Results)> Topics { get; } = WithRest(
    [
        ("Loads", LoadResults.Set.All),
        ("What may still be loaded", [RatingResults.PayloadLeft, RatingResults.TrailerCargoLeft, .. CargoResults.Set.All]),
        ("Ratios", [RatingResults.RatingUse, .. TyreUseResult.Set.All, .. RatioResults.Set.All]),
        ("Hitch and level", HitchResults.Set.All),
        ("On the road", RoadResults.Set.All),
        ("Climbing and starting", PowerResults.Set.All),
        ("Gaining speed", AccelerationResults.Set.All),
        ("SAE J2807's criteria as recalled: information, no verdict", AccelerationResults.RecalledSet.All),
        ("Keeping straight", StabilityResults.Set.All),
        ("Stopping and standing", BrakingResults.Set.All),
        ("Tipping", RolloverResults.Set.All),
    ]);

    public static IEnumerable<Section> Sections(RigStudy rig, UnitChoice units)
    {
        yield return new Section("Room to each limit, tightest first", [.. RatingTable.Of(rig).Select(line => LimitRow(line, units))]);
        foreach (var (title, results) in Topics)
        {
            yield return ResultRows.Of(title, results, rig, units);
            if (ReferenceEquals(results, StabilityResults.Set.All))
            {
                foreach (var section in MotionSections.Of(rig, units))
                {
                    yield return section;
                }
            }
        }

        foreach (var axle in rig.Axles)
        {
            yield return ResultRows.Of(Phrase.Capital(axle.Title), Catalogue.Of(ResultScope.Axle), axle, units);
        }
    }

    private static Row LimitRow(RatingLine line, UnitChoice units)
    {
        var title = line.Rating.Title;
        if (!line.Load.IsComputed)
        {
            return new Row(title, "", Shown.NotComputed(line.Load));
        }

        var load = units.Write(line.Rating.Load, line.Load.Subject, line.Load.Value);
        var estimated = line.IsEstimated ? ", " + Shown.Estimated : "";
        if (line.Limit is not { } limit)
        {
            var why = line.LimitNode is { } node ? Shown.NotComputed(node) : $"`{line.Rating.Limit.Keyword}` isn't written";
            return new Row(title, "", $"{load}{estimated}; its limit is unknown: {why}");
        }

        var of = $"{load} of {units.Write(limit.Value, limit.Kind)}{estimated}";
        var room = units.Write(Math.Abs(line.Room), limit.Kind);
        return line.IsOver ? new Row(title, $"{room} over", of, Ink.Error) : new Row(title, $"{room} left", of);
    }

    private static List<(string, IReadOnlyList<IResult>)> WithRest(List<(string Title, IReadOnlyList<IResult> Results)> topics)
    {
        var rest = Catalogue.Of(ResultScope.Rig).Except(topics.SelectMany(topic => topic.Results)).ToList();
        return rest.Count == 0 ? topics : [.. topics, ("More", rest)];
    }
}
