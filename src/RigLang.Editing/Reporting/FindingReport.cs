using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Reporting;

/// <summary>The findings of a file with their places as the file stands now.</summary>
internal static class FindingReport
{
    public static ImmutableArray<EditorFinding> Of(EditorState state, FileId file, CancellationToken cancel)
    {
        state.Noted(file);
        if (!state.IsWatched(file))
        {
            return [];
        }

        var findings = ImmutableArray.CreateBuilder<EditorFinding>();
        foreach (var finding in state.Analysis.Findings(file, cancel).Remaining)
        {
            if (Convert(state, finding, file) is { } converted)
            {
                findings.Add(converted);
            }
        }

        return findings.DrainToImmutable();
    }

    private static EditorFinding? Convert(EditorState state, Finding finding, FileId file) =>
        SeverityOf(state, finding) is { } severity && finding.Place.File == file && PlaceMap.RangeOf(state.Workspace, finding.Place) is { } range
            ? new EditorFinding(
                range, finding.Check, severity, finding.Message, Related(state, finding), [.. finding.Fixes.Select((fix, index) => FixEdits.Of(state.Workspace, fix, index == 0)).OfType<EditorFix>()])
            : null;

    /// <summary>Null where the person doesn't want to see it.</summary>
    private static Severity? SeverityOf(EditorState state, Finding finding) =>
        state.Severities.TryGetValue(finding.Check.Slug, out var wanted) || state.Severities.TryGetValue(finding.Check.Code, out wanted) ? wanted : finding.Severity;

    private static ImmutableArray<RelatedPlace> Related(EditorState state, Finding finding)
    {
        var places = ImmutableArray.CreateBuilder<RelatedPlace>(finding.Related.Length);
        foreach (var related in finding.Related)
        {
            if (PlaceMap.Of(state.Workspace, related.Place) is { } place)
            {
                places.Add(new RelatedPlace(place, related.Message));
            }
        }

        return places.DrainToImmutable();
    }
}
