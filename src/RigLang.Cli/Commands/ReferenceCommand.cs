using RigLang.Syntax;
using System.CommandLine;
using RigLang.Cli.Files;
using RigLang.Cli.Terminals;
using RigLang.Editing.Reference;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang reference</c>: makes the pages again that are made from the declarations. For those who work on RigLang; the help doesn't list it.</summary>
internal static class ReferenceCommand
{
    public static Command Create(Terminal terminal)
    {
        var write = new Option<string>("--write") { HelpName = "FOLDER", Description = "The top of the repository.", Required = true };
        var command = new Command("reference", "Write the reference pages, the check pages and the editors' grammar again.") { write };
        command.Hidden = true;
        command.SetAction(arguments => Run(terminal, arguments.GetValue(write)!));
        return command;
    }

    private static int Run(Terminal terminal, string path)
    {
        var folder = path.Length == 0 ? "" : DiskPaths.Absolute(path, terminal.Folder);
        if (!Directory.Exists(folder))
        {
            terminal.Error.Wrapped(2, new Piece(path, Ink.Place), ": no such folder");
            return ExitCodes.CouldNotRun;
        }

        var pages = ReferencePages.All().ToDictionary(page => page.Path, page => page.Text);
        var written = pages.Count(page => Write($"{folder}/{page.Key}", page.Value));
        var removed = LeftOver(folder, pages.Keys).ToList();
        removed.ForEach(File.Delete);
        terminal.Out.Line($"{Phrase.Many(pages.Count, "page")}: {written} written, {pages.Count - written} as they were, {removed.Count} removed.");
        return ExitCodes.Fine;
    }

    private static bool Write(string path, string text)
    {
        if (File.Exists(path) && File.ReadAllText(path) == text)
        {
            return false;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return true;
    }

    /// <summary>Pages of what is no longer declared. Both folders hold nothing that a person wrote.</summary>
    private static IEnumerable<string> LeftOver(string folder, IEnumerable<string> pages)
    {
        var kept = pages.ToHashSet();
        return new[] { ReferencePages.CheckFolder, ReferencePages.Folder }.Where(part => Directory.Exists($"{folder}/{part}"))
            .SelectMany(part => Directory.GetFiles($"{folder}/{part}", "*.md").Where(file => !kept.Contains($"{part}/{Path.GetFileName(file)}")));
    }
}
