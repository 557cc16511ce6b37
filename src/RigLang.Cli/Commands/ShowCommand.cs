using System.CommandLine;
using RigLang.Cli.Showing;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang show</c>.</summary>
internal static class ShowCommand
{
    public static Command Create(Terminal terminal)
    {
        var words = new Argument<string[]>("what")
        {
            HelpName = "WHAT",
            Description = "A name, with its kind before it where several things bear it: `coast`, `trip saddle`. Or a file or folder: everything in it.",
            Arity = new ArgumentArity(0, 3),
        };
        words.Validators.Add(PathArgument.RefuseOptions);
        var within = new Option<string>("--in") { HelpName = "PATH", Description = "Where to look for the name; the current folder if nothing is said." };
        var units = UnitsOption.Create();
        var json = new Option<bool>("--json") { Description = "Write everything as JSON, each result with the facts that went into it." };
        var command = new Command("show", "Show what is computed of a rig, trip or weighing.") { words, within, units, json };
        command.SetAction(arguments => Run(
            terminal, SubjectQuery.Of(arguments.GetValue(words) ?? [], arguments.GetValue(within), terminal.Folder), arguments.GetValue(units), arguments.GetValue(json)));
        return command;
    }

    private static int Run(Terminal terminal, SubjectQuery query, string? units, bool json)
    {
        if (SubjectLookup.Find(terminal, query) is not { } lookup)
        {
            return ExitCodes.CouldNotRun;
        }

        var subjects = lookup.Subjects.Select(subject => (subject, subject.Units(UnitsOption.Habit(units)))).ToList();
        if (json)
        {
            new ShowJson(lookup.Workspace, lookup.Shown).Write(terminal.OpenOutput(), subjects);
            return ExitCodes.Fine;
        }

        var isFirst = true;
        foreach (var (subject, choice) in subjects)
        {
            if (!isFirst)
            {
                terminal.Out.Line();
            }

            isFirst = false;
            SubjectPrinter.Print(terminal.Out, subject, choice, lookup.Workspace, lookup.Shown);
        }

        return ExitCodes.Fine;
    }
}
