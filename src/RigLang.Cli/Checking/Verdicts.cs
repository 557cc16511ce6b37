using RigLang.Editing.Reasons;
using RigLang.Cli.Showing;
using RigLang.Cli.Terminals;
using RigLang.Model.Declaring;

namespace RigLang.Cli.Checking;

/// <summary>What a check says of every rig and trip in a few lines, so that a newcomer sees at once what there is to see.</summary>
internal static class Verdicts
{
    public static void Print(Printout print, CheckRun run, CancellationToken cancel)
    {
        foreach (var declaration in run.Declarations)
        {
            cancel.ThrowIfCancellationRequested();
            if (declaration.Kind is not (DeclarationKind.Rig or DeclarationKind.Trip) || Subject.Of(run.Analysis, declaration) is not { } subject)
            {
                continue;
            }

            var title = declaration.Title is { } text ? $"  {text}" : "";
            print.Wrapped(2, new Piece($"{declaration.Kind.Keyword()} {declaration.Name}", Ink.Strong), title);
            var units = subject.Units();
            if (subject is ShownRig rig)
            {
                Print(print, [.. RigVerdict.Of(rig.Study, units)]);
            }
            else if (subject is ShownTrip trip)
            {
                TripOverview.Print(print, trip.Study, units);
            }

            print.Line();
        }
    }

    private static void Print(Printout print, VerdictLine[] lines)
    {
        var width = lines.Max(line => Cells.Width(line.Label)) + 2;
        foreach (var line in lines)
        {
            print.Wrapped(2 + width, ["  ", new Piece(Cells.PadRight(line.Label, width), Ink.Faint), .. line.Words]);
        }
    }
}

/// <summary>A line of a verdict: what it is about, and what there is to say.</summary>
internal sealed record VerdictLine(string Label, params Piece[] Words);
