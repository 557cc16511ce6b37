using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Editing.Locating;
using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Reporting;

/// <summary>The findings of a file with their places as the file stands now.</summary>
internal static class FindingReport
{
    /// <summary>With what the answers to its questions show.</summary>
    public static ImmutableArray<EditorFinding> Of(EditorState state, FileId file, CancellationToken cancel)
    {
        state.AsWritten.Answer(file, cancel);
        return Of(state, state.Analysis, file, cancel);
    }

    /// <summary>Those that don't wait for answers: where questions are still open, their facts count as not known.</summary>
    public static ImmutableArray<EditorFinding> AtOnce(EditorState state, FileId file, CancellationToken cancel) =>
        Of(state, state.AsWritten.HasOpenQuestions(file) ? state.AsWritten : state.Analysis, file, cancel);

    private static ImmutableArray<EditorFinding> Of(EditorState state, WorkspaceAnalysis analysis, FileId file, CancellationToken cancel)
    {
        state.Noted(file);
        if (!state.IsWatched(file))
        {
            return [];
        }

        var findings = ImmutableArray.CreateBuilder<EditorFinding>();
        foreach (var finding in analysis.Findings(file, cancel).Remaining)
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
