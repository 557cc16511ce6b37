using System.Collections.Immutable;
using RigLang.Editing.Answering;
using RigLang.Editing.Locating;
using RigLang.Editing.Reporting;
using RigLang.Editing.Workspaces;
using RigLang.Model.Files;

namespace RigLang.Editing.Fixing;

/// <summary>
/// Changes offered for a stretch of a file, in this order: what cures its findings, here and wherever the file has the like, then by a number that is solved
/// for; what accepts them; what was found for a question; other ways to
/// write what stands there; what can be drawn out of it.
/// </summary>
internal static class ChangeBuilder
{
    public static ImmutableArray<OfferedChange> Of(EditorState state, FileId file, LineRange range, CancellationToken cancel)
    {
        if (state.Workspace.Find(file) is not { } found)
        {
            return [];
        }

        var all = FindingReport.Of(state, file, cancel);
        var here = all.Where(finding => finding.Range.Start <= range.End && finding.Range.End >= range.Start).ToList();
        var spot = Spot.At(state, file, range.Start);
        return
        [
            .. Cures.Of(here, all),
            .. ComputedCures.Of(state, file, here, leavesErrors: false, cancel),
            .. Accepting.Of(found, range, here),
            .. ComputedCures.Of(state, file, here, leavesErrors: true, cancel),
            .. spot is null ? [] : AnswerFixes.At(spot).Concat(Rewriting.At(spot)).Concat(EstimateWriting.At(spot)).Concat(LoadExtracting.At(spot, range)),
            .. Cures.OfFile(all),
        ];
    }
}
