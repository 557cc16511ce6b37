using RigLang.Syntax;
using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Comparing;
using RigLang.Editing.Reasons;
using RigLang.Editing.Workspaces;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Editing.Comparing;

/// <summary>A comparison in words, ready to be set as text or as Markdown.</summary>
/// <param name="Verdict">One sentence.</param>
/// <param name="Inputs">What differs of what is written.</param>
/// <param name="Groups">What moved, by rig, trip, weighing or run.</param>
/// <param name="Left">What isn't shown, counted; sentences.</param>
public sealed record ComparisonView(string Verdict, ImmutableArray<InputRow> Inputs, ImmutableArray<ResultGroup> Groups, ImmutableArray<string> Left)
{
    /// <summary>Results of one declaration that are shown without <c>--all</c>: those that moved most.</summary>
    private const int MostResults = 16;
    private const int MostShares = 3;

    public static ComparisonView Of(Comparison comparison, UnitHabit habit, bool isAll)
    {
        var left = new List<string>();
        var shown = comparison.Changes.Where(change => isAll || change.Kind != ChangeKind.Rewritten).ToImmutableArray();
        if (shown.Length < comparison.Changes.Length)
        {
            left.Add($"{Phrase.Many(comparison.Changes.Length - shown.Length, "line")} written in another way, with the same value.");
        }

        var names = ShortNames.Of(comparison.Changes);
        var groups = comparison.Declarations.Select(pair => Group(comparison, names, pair, habit, isAll, left)).OfType<ResultGroup>().ToImmutableArray();
        left.Add($"{Phrase.Many(comparison.Unmoved, "result")} unmoved.");
        if (!comparison.IsTakenApart)
        {
            left.Add("So much changed that it wasn't worked out which change moved what.");
        }

        return new ComparisonView(VerdictWords.Of(comparison), [.. shown.Select(InputRow.Of)], groups, [.. left]);
    }

    /// <summary>Two declarations of one state: limits that are crossed come first, and the results that differ most.</summary>
    public static ComparisonView Beside(Comparison comparison, UnitHabit habit, bool isAll)
    {
        var view = Of(comparison, habit, isAll);
        return view with
        {
            Verdict = VerdictWords.Beside(comparison),
            Groups = [.. view.Groups.Select(group => group with
            {
                Limits = [.. group.Limits.OrderBy(limit => limit.Mark.Length == 0)],
                Results = [.. group.Results.OrderByDescending(row => row.Weight)],
            })],
        };
    }

    /// <summary>What comes of one declaration in the place of another; null where no result differs.</summary>
    public static ResultGroup? Outcome(WorkspaceAnalysis analysis, Declaration first, Declaration second, UnitHabit habit) =>
        Beside(Comparison.Beside(analysis, first, second, takeApart: false), habit, isAll: false).Groups.FirstOrDefault();

    private static ResultGroup? Group(Comparison comparison, ShortNames names, DeclarationPair pair, UnitHabit habit, bool isAll, List<string> left)
    {
        var limits = comparison.Limits.Where(limit => limit.Pair == pair).ToList();
        var results = comparison.Results.Where(result => result.Pair == pair).ToList();
        if (limits.Count == 0 && results.Count == 0)
        {
            return null;
        }

        var subject = (results.Select(result => result.After ?? result.Before).FirstOrDefault()?.Subject ?? (limits[0].After ?? limits[0].Before)!.Rating.Subject);
        var units = SubjectUnits.Of(subject, habit);
        var rows = results.Select(result => (Result: result, Row: RowOf(comparison, names, result, units))).ToList();
        var visible = isAll ? rows : [.. rows.Where(row => row.Row.Before != row.Row.After)];
        if (visible.Count < rows.Count)
        {
            left.Add($"{Phrase.Many(rows.Count - visible.Count, "result")} of {pair.Title} moved by less than is shown.");
        }

        var most = isAll ? visible : Most(visible, pair);
        if (most.Count < visible.Count)
        {
            left.Add($"{Phrase.Many(visible.Count - most.Count, "more result")} of {pair.Title} moved; `--all` shows them.");
        }

        var rooms = limits.Select(limit => LimitRow.Of(limit, units)).Where(row => isAll || row.Before != row.After).ToImmutableArray();
        return rooms.IsEmpty && most.Count == 0 ? null : new ResultGroup(pair.Title, pair.Newest.Title, rooms, [.. most.Select(row => row.Row)]);
    }

    /// <summary>Of a rig the axles are left to its limits, which say the same; then those that moved most, in the order in which results are shown.</summary>
    private static List<(ResultChange Result, ResultRow Row)> Most(List<(ResultChange Result, ResultRow Row)> rows, DeclarationPair pair)
    {
        var own = pair.Kind == DeclarationKind.Rig ? rows.Where(row => row.Result.Part.Length == 0) : rows;
        var most = own.OrderByDescending(row => Weight(row.Result)).Take(MostResults).Select(row => row.Result).ToHashSet();
        return [.. rows.Where(row => most.Contains(row.Result))];
    }

    /// <summary>How much a result moved, against itself.</summary>
    private static double Weight(ResultChange change)
    {
        var size = Math.Max(Math.Abs(change.Before?.Value ?? 0), Math.Abs(change.After?.Value ?? 0));
        return double.IsNaN(change.Difference) ? double.PositiveInfinity : size == 0 ? 0 : Math.Abs(change.Difference) / size;
    }

    private static ResultRow RowOf(Comparison comparison, ShortNames names, ResultChange change, UnitChoice units)
    {
        var title = change.Part.Length is 0 || change.Part == "runs" ? change.Result.Title : $"{change.Part}: {Lower(change.Result.Title)}";
        var difference = double.IsNaN(change.Difference) ? "" : units.WriteDifference(change.Result, change.After!.Subject, change.Before!.Value, change.After.Value, Larger(change));
        return new ResultRow(title, Value(change.Result, change.Before, units), Value(change.Result, change.After, units), difference, Because(comparison, names, change, units), Weight(change));
    }

    private static string Value(IResult result, Node<double>? node, UnitChoice units) =>
        node is null ? "–" : node.IsComputed ? units.Write(result, node.Subject, node.Value) : "not computed";

    /// <summary>Nothing where there is one change alone: it is the cause of everything.</summary>
    private static string Because(Comparison comparison, ShortNames names, ResultChange change, UnitChoice units)
    {
        if (change.Because.IsEmpty || comparison.Changes.Count(input => input.IsInput) == 1)
        {
            return "";
        }

        var subject = change.Before!.Subject;
        string Moved(double difference) => units.WriteDifference(change.Result, subject, change.Before.Value, change.Before.Value + difference, Larger(change));
        var shown = change.Because.Where(share => double.IsNaN(share.Difference) || Moved(share.Difference).Any(c => c is >= '1' and <= '9')).ToList();
        if (shown is [{ Difference: var sole } only] && !double.IsNaN(sole) && Moved(sole) == Moved(change.Difference))
        {
            return names[only.Change]; // all of the difference, which stands beside it
        }

        var words = shown.Take(MostShares).Select(share => double.IsNaN(share.Difference) ? $"{names[share.Change]} (alone: not computed)" : $"{names[share.Change]} {Moved(share.Difference)}").ToList();
        if (shown.Count > MostShares)
        {
            words.Add($"{shown.Count - MostShares} more");
        }

        if (!double.IsNaN(change.Together) && shown.Count > 0 && Moved(change.Together) is var together && together.Any(c => c is >= '1' and <= '9'))
        {
            words.Add($"{(shown.Count > 1 ? "together" : "the rest")} {together}");
        }

        return string.Join("; ", words);
    }

    /// <summary>The greater of both values, so that all numbers of a row have the same digits.</summary>
    private static double Larger(ResultChange change) => change.After is { IsComputed: true } after && Math.Abs(after.Value) > Math.Abs(change.Before!.Value) ? after.Value : change.Before!.Value;

    private static string Lower(string title) => title.Length > 1 && char.IsLower(title[1]) ? char.ToLowerInvariant(title[0]) + title[1..] : title;
}

/// <summary>An input that differs.</summary>
/// <param name="Sort">added, removed, changed, rewritten or renamed.</param>
public sealed record InputRow(string Sort, string Title, string? Before, string? After)
{
    public static InputRow Of(Change change) => new(
        change.Kind switch
        {
            ChangeKind.Added => "added",
            ChangeKind.Removed => "removed",
            ChangeKind.Changed => "changed",
            ChangeKind.Rewritten => "rewritten",
            _ => "renamed",
        },
        change.Title,
        change.Before,
        change.After);
}

/// <summary>What moved of one declaration.</summary>
public sealed record ResultGroup(string Title, string? Name, ImmutableArray<LimitRow> Limits, ImmutableArray<ResultRow> Results);

/// <summary>A result that moved.</summary>
/// <param name="Weight">How much it moved, against itself; infinite where one of both isn't computed.</param>
public sealed record ResultRow(string Title, string Before, string After, string Difference, string Because, double Weight);

/// <summary>The room to a limit that moved: "82 kg left".</summary>
/// <param name="Mark">"crossed", "holds again", or nothing.</param>
public sealed record LimitRow(string Title, string Before, string After, string Mark)
{
    public static LimitRow Of(LimitChange limit, UnitChoice units) => new(
        limit.Title, RoomWords.Of(limit.Before, units), RoomWords.Of(limit.After, units), limit.IsCrossed ? "crossed" : limit.IsMended ? "holds again" : "");
}
