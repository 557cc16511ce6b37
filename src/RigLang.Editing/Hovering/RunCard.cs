using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Linking;

namespace RigLang.Editing.Hovering;

/// <summary>A logged drive beside what the model says of it.</summary>
internal static class RunCard
{
    public static CardText Of(View view, RunStudy run) => new CardText().Heading(run.Title, run.Parts.Run.Title).Paragraph($"Of {run.Rig.Title}")
        .Table(ResultLines.Rows(RunResults.Set.All, run, SubjectUnits.Of(run, view.State.Units)))
        .Table(OfSet(view, run.Parts.Run));

    /// <summary>What all drives in sight say together, seen from a run or a rig; nothing where there is none.</summary>
    public static IEnumerable<string[]> OfSet(View view, Declaration from) =>
        view.State.Analysis.RunSet(from) is { } set ? ResultLines.Rows(RunSetResults.Set.All, set, SubjectUnits.Of(set, view.State.Units)) : [];
}
