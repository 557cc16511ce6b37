using RigLang.Analysis.Curing;
using RigLang.Editing.Locating;
using RigLang.Editing.Reporting;
using RigLang.Editing.Workspaces;
using RigLang.Model.Files;

namespace RigLang.Editing.Fixing;

/// <summary>Cures of which the number is solved for. Worked out for the findings at the place alone, when changes are asked for, and kept with the state.</summary>
internal static class ComputedCures
{
    /// <param name="here">The findings at the place.</param>
    /// <param name="leavesErrors">Those that leave another error, or those that don't.</param>
    public static IEnumerable<OfferedChange> Of(EditorState state, FileId file, IReadOnlyList<EditorFinding> here, bool leavesErrors, CancellationToken cancel)
    {
        if (here.Count == 0)
        {
            yield break;
        }

        foreach (var finding in state.Analysis.Findings(file, cancel).Remaining.Where(ComputedFixes.IsPossible))
        {
            if (PlaceMap.RangeOf(state.Workspace, finding.Place) is not { } range || here.FirstOrDefault(shown => shown.Range == range && shown.Check == finding.Check && shown.Message == finding.Message) is not { } cured)
            {
                continue;
            }

            var isFirst = finding.Fixes.IsEmpty;
            foreach (var computed in ComputedFixes.Of(state.Analysis, finding, cancel).Where(computed => computed.NewErrors.IsEmpty != leavesErrors))
            {
                if (FixEdits.Of(state.Workspace, computed.Fix, isFirst && !leavesErrors) is { } fix)
                {
                    yield return new OfferedChange(fix.Title, ChangeSort.Cure, () => fix.Edits) { IsPreferred = fix.IsPreferred, Cures = [cured] };
                    isFirst = false;
                }
            }
        }
    }
}
