using RigLang.Analysis.Results.Runs;
using RigLang.Editing.Reasons;
using RigLang.Cli.Checking;
using RigLang.Cli.Terminals;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Cli.Showing;

/// <summary>Prints everything there is to show of a subject.</summary>
internal static class SubjectPrinter
{
    public static void Print(Printout print, Subject subject, UnitChoice units, Workspace workspace, Func<FileId, string> shown)
    {
        Heading(print, subject, workspace, shown);
        if (subject is ShownTrip overview)
        {
            print.Line();
            TripOverview.Print(print, overview.Study, units);
        }

        IEnumerable<Section> sections = subject switch
        {
            ShownRig rig => [.. RigSheet.Sections(rig.Study, units), .. RunSetSheet.Sections(rig.Runs, units)],
            ShownTrip trip => TripSheet.Sections(trip.Study, units),
            ShownWeighing weighing => WeighingSheet.Sections(weighing.Study, units),
            ShownRun run => [ResultRows.Of("The drive against the model", RunResults.Set.All, run.Study, units), .. RunSetSheet.Sections(run.Runs, units)],
            _ => [],
        };
        // Apart from the results, so that its words don't push them out of line.
        Sheet.Print(print, [AnswerSection.Of(subject.Asked)]);
        Sheet.Print(print, sections);
        // Apart from the results, so that its words don't push them out of line.
        Sheet.Print(print, [EstimateSection.Of(subject, units)]);
    }

    /// <summary>Kind, name and title, and where it stands.</summary>
    public static void Heading(Printout print, Subject subject, Workspace workspace, Func<FileId, string> shown)
    {
        var declaration = subject.Declaration;
        var title = declaration.Title is { } text ? $"  {text}" : "";
        print.Wrapped(2, new Piece($"{declaration.Kind.Keyword()} {declaration.Name}", Ink.Strong), title);
        print.Line(new Piece(FindingPrinter.PlaceWords(workspace, shown, declaration.Own.NamePlace), Ink.Faint));
    }
}
