using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Editing.Hovering;

/// <summary>Results and their reasons as rows and lines of a card.</summary>
internal static class ResultLines
{
    private const int MostFacts = 10;

    /// <summary>Title and value of each result that applies; those that lack a fact say which.</summary>
    public static IEnumerable<string[]> Rows(IEnumerable<IResult> results, ISubject subject, UnitChoice units) =>
        from result in results
        let node = result.Compute(subject)
        where node is { Applies: true }
        select new[] { result.Title, Shown.Marked(result, node, units) };

    /// <summary>What was estimated under some results, and which line would replace it.</summary>
    public static string Estimates(IEnumerable<Node> nodes)
    {
        var facts = Ground.Of(nodes).Where(read => read.IsEstimated).GroupBy(read => (read.Fact.Keyword, read.Fact.Else)).ToList();
        if (facts.Count == 0)
        {
            return "";
        }

        var words = facts.Take(MostFacts).Select(group => $"- `{group.Key.Keyword}`{Owners(group)}: {group.Key.Else}");
        var more = facts.Count > MostFacts ? $"\n- and {facts.Count - MostFacts} more" : "";
        return $"Estimated, until these lines are written\n{string.Join("\n", words)}{more}";
    }

    /// <summary>The facts a result rests on, with their lines and as their author wrote them.</summary>
    public static IEnumerable<string> Facts(Workspace workspace, Node node, UnitChoice units, FileId seenFrom) =>
        Ground.Of(node).Where(read => !read.IsEstimated && read.Origin != ReadOrigin.Default).Select(read => Fact(workspace, read, units, seenFrom));

    private static string Fact(Workspace workspace, FactRead read, UnitChoice units, FileId seenFrom)
    {
        var name = BlockWords.Of(read.Block, read.Line?.Title ?? read.Fact.Keyword);
        return (read.Origin, read.Line) switch
        {
            (ReadOrigin.Practice, { } line) => $"{read.Fact.Keyword}: {Computed(read, units)}, assumed by the practice ({PlaceMap.Words(workspace, line.Place, seenFrom)})",
            (ReadOrigin.Written or ReadOrigin.Varied, { } line) => $"{name}: {BlockWords.Value(read, units)} ({PlaceMap.Words(workspace, line.Place, seenFrom)})",
            (ReadOrigin.Solved, { } line) => $"{name}: {BlockWords.Found(read, units)}, found for {BlockWords.Wish(line)} ({PlaceMap.Words(workspace, line.Place, seenFrom)})",
            (ReadOrigin.Written or ReadOrigin.Varied, null) => $"{name}: {BlockWords.Value(read, units)}",
            _ => $"{name}: not known",
        };
    }

    /// <summary>The same in a line: only which lines would replace estimates.</summary>
    public static string EstimatesInBrief(IEnumerable<Node> nodes)
    {
        var facts = Ground.Of(nodes).Where(read => read.IsEstimated).GroupBy(read => read.Fact.Keyword).ToList();
        return facts.Count == 0 ? "" : $"Estimated, until these lines are written: {string.Join(", ", facts.Select(group => $"`{group.Key}`{Owners(group)}"))}.";
    }

    private static string Owners(IEnumerable<FactRead> reads)
    {
        var owners = reads.Select(read => BlockWords.Of(read.Block)).Where(owner => owner.Length > 0).Distinct().ToList();
        return owners.Count == 0 ? "" : $" of {string.Join(" and ", owners)}";
    }

    private static string Computed(FactRead read, UnitChoice units) => read.Fact.Kind is { } kind ? units.Write(read.Value, kind) : "";
}
