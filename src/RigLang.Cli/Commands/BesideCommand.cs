using System.CommandLine;
using RigLang.Cli.Comparing;
using RigLang.Cli.Json;
using RigLang.Cli.Showing;
using RigLang.Cli.Terminals;
using RigLang.Comparing;
using RigLang.Editing.Comparing;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang beside</c>.</summary>
internal static class BesideCommand
{
    public static Command Create(Terminal terminal)
    {
        var words = new Argument<string[]>("what")
        {
            HelpName = "NAME [OTHER]",
            Description = "A rig, trip, weighing or run beside the one that it is like; or beside another of its kind. A kind before the name tells things of one name apart.",
            Arity = new ArgumentArity(1, 3),
        };
        words.Validators.Add(PathArgument.RefuseOptions);
        var within = new Option<string>("--in") { HelpName = "PATH", Description = "The file or folder to look in; the current folder if nothing is said." };
        var all = new Option<bool>("--all") { Description = "Leave nothing out." };
        var units = UnitsOption.Create();
        var json = new Option<bool>("--json") { Description = "Write everything as JSON, for other programs." };
        var command = new Command("beside", "Show two of a kind side by side: what differs, and what comes of it.") { words, within, all, units, json };
        command.SetAction((arguments, cancel) =>
        {
            if (Find(terminal, arguments.GetValue(words) ?? [], arguments.GetValue(within)) is not var (lookup, first, second))
            {
                return Task.FromResult(ExitCodes.CouldNotRun);
            }

            var comparison = Comparison.Beside(lookup.Analysis, first, second, cancel: cancel);
            var view = ComparisonView.Beside(comparison, UnitsOption.Habit(arguments.GetValue(units)), arguments.GetValue(all));
            if (arguments.GetValue(json))
            {
                JsonOutput.Write(terminal.OpenOutput(), ComparisonJson.Beside(comparison, view.Verdict, first.ToString(), second.ToString()));
            }
            else
            {
                ComparisonPrinter.Print(terminal.Out, comparison, view, (Titled(first), Titled(second)), new ComparisonHeads("What differs", first.Name, second.Name));
            }

            return Task.FromResult(ExitCodes.Fine);
        });
        return command;
    }

    private static string Titled(Declaration declaration) => declaration.Own.Title is { } title ? $"{declaration} \u201c{title}\u201d" : declaration.ToString();

    /// <summary>Null when one of them isn't there; why is printed then.</summary>
    private static (SubjectLookup Lookup, Declaration First, Declaration Second)? Find(Terminal terminal, string[] words, string? within)
    {
        DeclarationKind? kind = words.Length > 1 ? DeclarationKinds.Find(words[0]) : null;
        var names = kind is null ? words : words[1..];
        if (names.Length > 2)
        {
            terminal.Error.Wrapped(2, $"Two can stand side by side, not {names.Length}: `riglang beside {names[0]} {names[1]}`.");
            return null;
        }

        var paths = within is null ? new SubjectQuery(kind, names[0], []) : new SubjectQuery(kind, names[0], [within]);
        if (SubjectLookup.Find(terminal, paths, "beside") is not { } lookup)
        {
            return null;
        }

        var named = lookup.Subjects[0].Declaration;
        if (names.Length == 1)
        {
            if (named.Parent is { } parent)
            {
                return (lookup, parent, named);
            }

            terminal.Error.Wrapped(2, $"{named} isn't `like` another, so name what it shall stand beside: `riglang beside {named.Name} OTHER`.");
            return null;
        }

        return SubjectLookup.Find(terminal, paths with { Kind = named.Kind, Name = names[1] }, "beside") is { } other
            && lookup.Analysis.Workspace.Find(other.Subjects[0].Declaration.Own.File) is { } file
            && lookup.Analysis.Workspace.Link(file.Id)?.FindOwn(named.Kind, names[1]) is { } second
            ? (lookup, named, second)
            : null;
    }
}
