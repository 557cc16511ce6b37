using System.CommandLine;
using RigLang.Analysis.Results.Planning;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Planning;
using RigLang.Cli.Showing;
using RigLang.Cli.Terminals;
using RigLang.Editing.Workspaces;
using RigLang.Model.Declaring;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang plan</c>.</summary>
internal static class PlanCommand
{
    public static Command Create(Terminal terminal)
    {
        var words = new Argument<string[]>("what") { HelpName = "TRIP", Description = "A trip's name; or a file or folder: every trip in it.", Arity = new ArgumentArity(0, 3) };
        words.Validators.Add(PathArgument.RefuseOptions);
        var within = new Option<string>("--in") { HelpName = "PATH", Description = "Where to look for the name; the current folder if nothing is said." };
        var json = new Option<bool>("--json") { Description = "Write the plan as JSON." };
        var command = new Command("plan", "Solve a trip: how fast to drive each leg and how far to charge at each stop, to be there soonest.") { words, within, json };
        command.SetAction(arguments => Run(terminal, SubjectQuery.Of(arguments.GetValue(words) ?? [], arguments.GetValue(within), terminal.Folder), arguments.GetValue(json)));
        return command;
    }

    private static int Run(Terminal terminal, SubjectQuery query, bool json)
    {
        if (query.Kind is { } kind && kind != DeclarationKind.Trip)
        {
            terminal.Error.Wrapped(2, $"A {kind.Keyword()} can't be planned; a trip can.");
            return ExitCodes.CouldNotRun;
        }

        if (SubjectLookup.Find(terminal, query with { Kind = DeclarationKind.Trip }) is not { } lookup)
        {
            return ExitCodes.CouldNotRun;
        }

        var trips = lookup.Subjects.OfType<ShownTrip>().ToList();
        if (trips.Count == 0)
        {
            terminal.Error.Wrapped(2, "No trip is declared there.");
            return ExitCodes.CouldNotRun;
        }

        if (json)
        {
            PlanJson.Write(terminal.OpenOutput(), lookup.Workspace, lookup.Shown, trips);
        }
        else
        {
            Print(terminal.Out, lookup, trips);
        }

        return trips.Max(trip => EndOf(PlanResults.FastestTime.Compute(trip.Study)!));
    }

    private static void Print(Printout print, SubjectLookup lookup, IEnumerable<ShownTrip> trips)
    {
        var isFirst = true;
        foreach (var trip in trips)
        {
            if (!isFirst)
            {
                print.Line();
            }

            isFirst = false;
            SubjectPrinter.Heading(print, trip, lookup.Workspace, lookup.Shown);
            print.Line();
            PlanPrinter.Print(print, trip.Study, trip.Units(UnitHabit.AsWritten));
        }
    }

    private static int EndOf(Node<double> time) => time.IsComputed || !time.Applies ? ExitCodes.Fine : time.Refusal is not null && time.Missing is null ? ExitCodes.Wanting : ExitCodes.CouldNotRun;
}
