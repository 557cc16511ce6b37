using System.CommandLine;
using RigLang.Cli.Checking;
using RigLang.Cli.Files;
using RigLang.Cli.Terminals;
using RigLang.Model.Files;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang check</c>.</summary>
internal static class CheckCommand
{
    public static Command Create(Terminal terminal)
    {
        var paths = new Argument<string[]>("paths") { HelpName = "PATH", Description = "Files and folders; the current folder if none is named.", Arity = ArgumentArity.ZeroOrMore };
        paths.Validators.Add(PathArgument.RefuseOptions);
        var json = new Option<bool>("--json") { Description = "Write everything as JSON, for other programs." };
        var strict = new Option<bool>("--strict") { Description = "End with 1 when there are warnings." };
        var quiet = new Option<bool>("--quiet", "-q") { Description = "Only findings and the closing line, no verdict on rigs and trips." };
        var command = new Command("check", "Check rig files: what is wrong or missing, and a short verdict on every rig and trip.") { paths, json, strict, quiet };
        command.SetAction((arguments, cancel) => Task.FromResult(Run(
            terminal, arguments.GetValue(paths) ?? [], arguments.GetValue(json), arguments.GetValue(strict), arguments.GetValue(quiet), cancel)));
        return command;
    }

    private static int Run(Terminal terminal, string[] paths, bool json, bool strict, bool quiet, CancellationToken cancel)
    {
        var source = new DiskFileSource();
        string Shown(FileId file) => DiskPaths.Shown(file, terminal.Folder);
        var run = CheckRun.Of(RigInputs.Find(paths, source, terminal.Folder), source, Shown, cancel);
        if (json)
        {
            CheckJson.Write(terminal.OpenOutput(), run, Shown);
            return run.ExitCode(strict);
        }

        foreach (var problem in run.Problems)
        {
            terminal.Error.Wrapped(2, [new Piece(problem.Path, Ink.Place), ": ", problem.Words]);
        }

        if (run.Files.All(file => file.Problem is not null))
        {
            return ExitCodes.CouldNotRun;
        }

        var printer = new FindingPrinter(terminal.Out, run.Analysis.Workspace, Shown);
        foreach (var finding in run.Files.SelectMany(file => file.Findings.Remaining))
        {
            printer.Print(finding);
        }

        if (!quiet)
        {
            Verdicts.Print(terminal.Out, run, cancel);
        }

        CheckSummary.Print(terminal.Out, run);
        return run.ExitCode(strict);
    }
}
