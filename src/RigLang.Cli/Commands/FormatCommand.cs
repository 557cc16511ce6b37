using RigLang.Syntax;
using System.CommandLine;
using System.Text;
using RigLang.Cli.Files;
using RigLang.Cli.Formatting;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang format</c>.</summary>
internal static class FormatCommand
{
    private const string StandardInput = "-";

    public static Command Create(Terminal terminal)
    {
        var paths = new Argument<string[]>("paths")
        {
            HelpName = "PATH",
            Description = "Files and folders; the current folder if none is named. - reads standard input and writes to standard output.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        paths.Validators.Add(PathArgument.RefuseOptions);
        var check = new Option<bool>("--check") { Description = "Change nothing; list the files that would change and end with 1 if there are any." };
        var command = new Command("format", "Set indents and blanks right. Columns are left where their author put them.") { paths, check };
        command.SetAction(arguments => Run(terminal, arguments.GetValue(paths) ?? [], arguments.GetValue(check)));
        return command;
    }

    private static int Run(Terminal terminal, string[] paths, bool isDry)
    {
        if (paths is [StandardInput])
        {
            return FormatInput(terminal, isDry);
        }

        if (paths.Contains(StandardInput))
        {
            terminal.Error.Wrapped(2, "- stands for standard input and goes with no other path.");
            return ExitCodes.CouldNotRun;
        }

        var inputs = RigInputs.Find(paths, new DiskFileSource(), terminal.Folder);
        var problems = inputs.Problems.ToList();
        var changed = 0;
        foreach (var file in inputs.Files)
        {
            var shown = DiskPaths.Shown(file, terminal.Folder);
            var outcome = FormatOutcome.Of(file.Path, isDry);
            if (outcome.Problem is { } problem)
            {
                problems.Add(new InputProblem(shown, problem));
            }
            else if (outcome.IsChanged)
            {
                changed++;
                terminal.Out.Line(isDry ? "would change " : "formatted ", new Piece(shown, Ink.Place));
            }
        }

        foreach (var problem in problems)
        {
            terminal.Error.Wrapped(2, new Piece(problem.Path, Ink.Place), ": ", problem.Words);
        }

        if (!inputs.Files.IsEmpty)
        {
            var whole = Phrase.Many(inputs.Files.Length, "file");
            terminal.Out.Line(changed == 0 ? $"Nothing to change in {whole}." : $"{changed} of {whole} {(isDry ? "would change" : "changed")}.");
        }

        return problems.Count > 0 ? ExitCodes.CouldNotRun : isDry && changed > 0 ? ExitCodes.Wanting : ExitCodes.Fine;
    }

    private static int FormatInput(Terminal terminal, bool isDry)
    {
        using var input = terminal.OpenInput();
        var read = DiskText.Read(input);
        if (read.Text is not { } text)
        {
            terminal.Error.Wrapped(2, "Standard input can't be formatted: ", read.Problem!, ".");
            return ExitCodes.CouldNotRun;
        }

        var formatted = FormatOutcome.Formatted(text);
        if (isDry)
        {
            return formatted == text ? ExitCodes.Fine : ExitCodes.Wanting;
        }

        var output = terminal.OpenOutput();
        output.Write(new UTF8Encoding(false).GetBytes(read.HasMark ? "\uFEFF" + formatted : formatted));
        output.Flush();
        return ExitCodes.Fine;
    }
}
