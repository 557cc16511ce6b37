using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;

namespace RigLang.Editing.Hovering;

/// <summary>A logged drive beside what the model says of it.</summary>
internal static class RunCard
{
    public static CardText Of(View view, RunStudy run) => new CardText().Heading(run.Title, run.Parts.Run.Title).Paragraph($"Of {run.Rig.Title}")
        .Table(ResultLines.Rows(RunResults.Set.All, run, SubjectUnits.Of(run, view.State.Units)));
}
