using RigLang.Cli.Checking;
using RigLang.Cli.Terminals;
using RigLang.Comparing;
using RigLang.Editing.Comparing;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Syntax.Checks;

namespace RigLang.Cli.Comparing;

/// <summary>Prints a comparison for people: the verdict first, then what went in, what came of it, what the checks say, and what isn't shown.</summary>
internal static class ComparisonPrinter
{
    private const int Indent = 2;
    private const int InLine = 60;

    /// <param name="between">The titles of what is compared.</param>
    /// <param name="words">Over what differs, and over the columns.</param>
    public static void Print(Printout print, Comparison comparison, ComparisonView view, (string Before, string After) between, ComparisonHeads words)
    {
        print.Wrapped(0, new Piece(view.Verdict, InkOf(comparison.Verdict)));
        print.Wrapped(0, new Piece($"{between.Before} → {between.After}", Ink.Faint));
        foreach (var file in comparison.Unread)
        {
            print.Line();
            LineDifference.Print(print, file);
        }

        Inputs(print, view, words);
        foreach (var group in view.Groups)
        {
            Group(print, group, words);
        }

        Findings(print, comparison);
        if (comparison.Verdict != Verdict.Same)
        {
            print.Line();
            foreach (var line in view.Left)
            {
                print.Wrapped(0, new Piece(line, Ink.Faint));
            }
        }
    }

    private static void Inputs(Printout print, ComparisonView view, ComparisonHeads words)
    {
        if (view.Inputs.IsEmpty)
        {
            return;
        }

        print.Line();
        print.Line(new Piece(words.Inputs, Ink.Strong));
        foreach (var row in view.Inputs)
        {
            print.Wrapped(Indent + 2, new string(' ', Indent), new Piece(row.Sort, Ink.Faint), " ", row.Title, row.Before is null || row.After is null ? Tail(row) : "");
            if (row is { Before: { } before, After: { } after })
            {
                var both = before.Length + after.Length < InLine;
                print.Wrapped(Indent + 6, new string(' ', Indent + 4), before, both ? $" → {after}" : "");
                if (!both)
                {
                    print.Wrapped(Indent + 6, new string(' ', Indent + 2), $"→ {after}");
                }
            }
        }
    }

    /// <summary>The line that came or went; a declaration by itself is named already.</summary>
    private static string Tail(InputRow row) => (row.Before ?? row.After) is { } text && text != row.Title && !row.Title.EndsWith(text, StringComparison.Ordinal) ? $": {text}" : "";

    private static void Group(Printout print, ResultGroup group, ComparisonHeads words)
    {
        print.Line();
        print.Line(new Piece(group.Title, Ink.Strong), group.Name is null ? "" : $"  {group.Name}");
        if (!group.Limits.IsEmpty)
        {
            var rooms = new Columns("room to each limit", words.Before, words.After, "");
            foreach (var limit in group.Limits)
            {
                rooms.Add(limit.Title, limit.Before, limit.After, limit.Mark);
            }

            rooms.Print(print);
        }

        Results(print, group, words);
    }

    private static void Results(Printout print, ResultGroup group, ComparisonHeads words)
    {
        if (group.Results.IsEmpty)
        {
            return;
        }

        var title = group.Results.Max(row => Cells.Width(row.Title));
        var (before, now, moved) = (Width(group, row => row.Before, words.Before), Width(group, row => row.After, words.After), Width(group, row => row.Difference, ""));
        title = Math.Min(title, Math.Max(12, print.Width - Indent - before - now - moved - 6));
        print.Line(new Piece($"{new string(' ', Indent)}{Cells.PadRight("result", title)}  {Cells.PadLeft(words.Before, before)}  {Cells.PadLeft(words.After, now)}".TrimEnd(), Ink.Faint));
        foreach (var row in group.Results)
        {
            var long_ = Cells.Width(row.Title) > title;
            if (long_)
            {
                print.Line(new string(' ', Indent), row.Title);
            }

            var line = $"{new string(' ', Indent)}{Cells.PadRight(long_ ? "" : row.Title, title)}  {Cells.PadLeft(row.Before, before)}  {Cells.PadLeft(row.After, now)}  {Cells.PadLeft(row.Difference, moved)}".TrimEnd();
            if (row.Because.Length > 0 && Cells.Width(line) + 2 + Cells.Width(row.Because) <= print.Width)
            {
                print.Line($"{line}  ", new Piece(row.Because, Ink.Faint));
                continue;
            }

            print.Line(line);
            if (row.Because.Length > 0)
            {
                print.Wrapped(Indent + 4, new string(' ', Indent + 2), new Piece("because ", Ink.Faint), row.Because);
            }
        }
    }

    private static int Width(ResultGroup group, Func<ResultRow, string> column, string heading) => Math.Max(heading.Length, group.Results.Max(row => Cells.Width(column(row))));

    private static void Findings(Printout print, Comparison comparison)
    {
        var findings = comparison.Findings;
        if (findings.New.IsEmpty && findings.Cleared.IsEmpty)
        {
            return;
        }

        print.Line();
        print.Line(new Piece("What the checks say", Ink.Strong));
        List(print, "new", findings.New, comparison.After);
        List(print, "gone", findings.Cleared, comparison.Before);
        if (findings.Still > 0)
        {
            print.Line(new string(' ', Indent), new Piece($"{findings.Still} as before", Ink.Faint));
        }
    }

    private static void List(Printout print, string mark, IEnumerable<Finding> findings, ComparedState state)
    {
        string Shown(FileId file) => state.NameOf(file);
        foreach (var finding in findings)
        {
            print.Wrapped(
                Indent + 4, new string(' ', Indent), new Piece(mark, Ink.Faint), " ", new Piece(FindingPrinter.Words(finding.Severity), InkOf(finding.Severity)),
                $" {finding.Check.Code} {finding.Check.Slug} ", new Piece(FindingPrinter.PlaceWords(state.Workspace, Shown, finding.Place), Ink.Place), $": {finding.Message}");
        }
    }

    private static Ink InkOf(Severity severity) => severity switch { Severity.Error => Ink.Error, Severity.Warning => Ink.Warning, _ => Ink.Note };

    private static Ink InkOf(Verdict verdict) => verdict switch
    {
        Verdict.LimitCrossed or Verdict.NewErrors => Ink.Error,
        Verdict.ResultsMoved => Ink.Strong,
        _ => Ink.Good,
    };
}

/// <summary>What stands over what differs, and over the two columns.</summary>
internal sealed record ComparisonHeads(string Inputs, string Before, string After)
{
    /// <summary>Of two states.</summary>
    public static ComparisonHeads States { get; } = new("What went in", "before", "now");
}
