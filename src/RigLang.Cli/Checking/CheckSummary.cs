using RigLang.Cli.Terminals;
using RigLang.Syntax;

namespace RigLang.Cli.Checking;

/// <summary>The line that closes a check: what was found, in how many files, and how much was accepted.</summary>
internal static class CheckSummary
{
    public static void Print(Printout print, CheckRun run)
    {
        var files = Phrase.Many(run.Files.Length - run.Files.Count(file => file.Problem is not null), "file");
        Piece[] found =
        [
            .. Counted(run.Errors, "error", Ink.Error),
            .. Counted(run.Warnings, "warning", Ink.Warning),
            .. Counted(run.Notes, "note", Ink.Note),
        ];
        var accepted = run.Accepted == 0 ? "" : $"; {Phrase.Many(run.Accepted, "finding")} accepted";
        if (found.Length == 0)
        {
            print.Wrapped(0, [new Piece("Nothing to report", Ink.Good), $" in {files}{accepted}."]);
        }
        else
        {
            print.Wrapped(0, [.. found[1..], $" in {files}{accepted}."]);
        }
    }

    private static Piece[] Counted(int count, string noun, Ink ink) => count == 0 ? [] : [", ", new Piece(Phrase.Many(count, noun), ink)];
}
