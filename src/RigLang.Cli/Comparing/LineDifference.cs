using RigLang.Syntax;
using DiffPlex;
using DiffPlex.DiffBuilder;
using DiffPlex.DiffBuilder.Model;
using RigLang.Cli.Checking;
using RigLang.Cli.Terminals;
using RigLang.Comparing;

namespace RigLang.Cli.Comparing;

/// <summary>A file that can't be understood in one of the states, shown by its lines: what isn't understood can't be compared as values.</summary>
internal static class LineDifference
{
    public static void Print(Printout print, UnreadFile file)
    {
        print.Wrapped(2, new Piece(file.Name, Ink.Place), $": {Errors(file)}, so its lines are shown as they are.");
        foreach (var finding in file.After.Concat(file.After.IsEmpty ? file.Before : []))
        {
            print.Wrapped(6, "  ", new Piece("error", Ink.Error), $" {finding.Check.Code} {finding.Message}");
        }

        foreach (var line in Changed(file))
        {
            print.Line($"  {(line.Type == ChangeType.Inserted ? '+' : '-')} {line.Text}");
        }
    }

    public static IEnumerable<DiffPiece> Changed(UnreadFile file) =>
        new InlineDiffBuilder(new Differ()).BuildDiffModel(string.Join('\n', file.TextBefore), string.Join('\n', file.TextAfter), ignoreWhitespace: false).Lines
            .Where(line => line.Type is ChangeType.Inserted or ChangeType.Deleted);

    public static string Errors(UnreadFile file) => (file.Before.Length, file.After.Length) switch
    {
        (var before, 0) => $"{Phrase.Many(before, "error")} before, none now",
        (0, var after) => $"{Phrase.Many(after, "error")} now, none before",
        var (before, after) => $"{Phrase.Many(before, "error")} before, {after} now",
    };
}
