using System.CommandLine;
using System.Text;
using RigLang.Cli.Comparing;
using RigLang.Cli.Json;
using RigLang.Cli.Terminals;
using RigLang.Comparing;
using RigLang.Editing.Comparing;
using RigLang.Syntax.Checks;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang compare</c>.</summary>
internal static class CompareCommand
{
    public static Command Create(Terminal terminal)
    {
        var words = new Argument<string[]>("what")
        {
            HelpName = "WHAT",
            Description = "Nothing: what was last committed with the files as they are. A revision: that one with the files as they are. Two revisions, two files or two folders: these.",
            Arity = new ArgumentArity(0, 2),
        };
        words.Validators.Add(PathArgument.RefuseOptions);
        var within = new Option<string>("--in") { HelpName = "PATH", Description = "The file or folder to compare of the revisions; the current folder if nothing is said." };
        var all = new Option<bool>("--all") { Description = "Leave nothing out: values written in another way, and every result that moved." };
        var units = UnitsOption.Create();
        var markdown = new Option<bool>("--markdown") { Description = "Write Markdown, for a merge request." };
        var json = new Option<bool>("--json") { Description = "Write everything as JSON, for other programs." };
        var strict = new Option<bool>("--strict") { Description = "End with 1 when a result moved or a warning came." };
        var command = new Command("compare", "Compare two states: what went in, which results moved and why, what the checks say now.") { words, within, all, units, markdown, json, strict };
        command.Validators.Add(result =>
        {
            if (result.GetValue(markdown) && result.GetValue(json))
            {
                result.AddError("`--markdown` and `--json` can't both be had: choose one.");
            }
        });
        command.SetAction((arguments, cancel) =>
        {
            using var targets = Targets.Find(arguments.GetValue(words) ?? [], arguments.GetValue(within), terminal.Folder);
            if (!targets.Problems.IsEmpty)
            {
                foreach (var problem in targets.Problems)
                {
                    terminal.Error.Wrapped(2, problem);
                }

                return Task.FromResult(ExitCodes.CouldNotRun);
            }

            var comparison = Comparison.Of(targets.Before, targets.After, cancel);
            var view = ComparisonView.Of(comparison, UnitsOption.Habit(arguments.GetValue(units)), arguments.GetValue(all));
            if (arguments.GetValue(json))
            {
                JsonOutput.Write(terminal.OpenOutput(), ComparisonJson.Of(comparison, view.Verdict, targets.TitleBefore, targets.TitleAfter));
            }
            else if (arguments.GetValue(markdown))
            {
                terminal.OpenOutput().Write(Encoding.UTF8.GetBytes(ComparisonMarkdown.Of(comparison, view, targets.TitleBefore, targets.TitleAfter)));
            }
            else
            {
                ComparisonPrinter.Print(terminal.Out, comparison, view, (targets.TitleBefore, targets.TitleAfter), ComparisonHeads.States);
            }

            return Task.FromResult(ExitCode(comparison, arguments.GetValue(strict)));
        });
        return command;
    }

    private static int ExitCode(Comparison comparison, bool isStrict) => comparison.Verdict switch
    {
        Verdict.LimitCrossed or Verdict.NewErrors => ExitCodes.Errors,
        Verdict.ResultsMoved when isStrict => ExitCodes.Wanting,
        _ when isStrict && comparison.Findings.New.Any(finding => finding.Severity == Severity.Warning) => ExitCodes.Wanting,
        _ => ExitCodes.Fine,
    };
}
