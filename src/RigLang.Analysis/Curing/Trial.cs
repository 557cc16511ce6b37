using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Curing;

/// <summary>Makes a change in a copy of the files and checks again: the file of the finding, and those that the change touches.</summary>
internal sealed class Trial(WorkspaceAnalysis analysis, Finding finding)
{
    private readonly Dictionary<FileId, ImmutableArray<Finding>> before = [];

    public Outcome Judge(Change change)
    {
        var workspace = analysis.Workspace;
        // From the last place to the first, so that none moves before its turn.
        foreach (var edit in change.Edits.OrderByDescending(edit => analysis.Workspace.LineOf(edit.Place)).ThenByDescending(edit => edit.Place.Span.Start))
        {
            if (Edited(workspace, edit, analysis.Workspace.LineOf(edit.Place)) is not { } file)
            {
                return Outcome.Impossible;
            }

            workspace = workspace.WithOpen(file);
        }

        var after = analysis.With(workspace);
        List<Finding> mine = [], theirs = [];
        foreach (var file in change.Edits.Select(edit => edit.Place.File).Prepend(finding.Place.File).Distinct())
        {
            mine.AddRange(Before(file));
            theirs.AddRange(after.Findings(file).Remaining);
        }

        var isCured = theirs.Count(other => IsAlike(other, finding)) < mine.Count(other => IsAlike(other, finding));
        var index = analysis.Workspace.Find(finding.Place.File)!.Declarations.ToList().FindIndex(own => own.Syntax == finding.Place.Declaration);
        var place = workspace.Find(finding.Place.File)!.Declarations is { } declarations && index >= 0 && index < declarations.Length ? declarations[index].NamePlace : finding.Place;
        return new Outcome(isCured, New(Severity.Error), New(Severity.Warning), ComputedFixes.StudyOf(after, finding with { Place = place }));

        ImmutableArray<string> New(Severity severity)
        {
            var known = mine.Where(other => other.Severity == severity).CountBy(Key).ToDictionary();
            return [.. theirs.Where(other => other.Severity == severity).CountBy(Key).Where(pair => pair.Value > known.GetValueOrDefault(pair.Key)).Select(pair => pair.Key.Slug)];
        }
    }

    /// <summary>Whether two findings of one rig or trip report the same thing, perhaps with other numbers.</summary>
    public static bool IsSame(Finding one, Finding other) => one.Check.Code == other.Check.Code && (other.About.Length > 0 ? one.About == other.About : one.Place == other.Place);

    private static bool IsAlike(Finding one, Finding other) => Key(one) == Key(other);

    /// <summary>What stays the same of a finding while the files around it change: its file, the line that opens its declaration, its check and what it is about.</summary>
    private static (FileId File, string Head, string Slug, string About) Key(Finding finding) =>
        (finding.Place.File, finding.Place.Declaration.Lines[0].Text, finding.Check.Slug, finding.About);

    private static RigFile? Edited(Workspace workspace, Replacement edit, int? at) =>
        workspace.Find(edit.Place.File) is { } file && at is { } line
            ? file.With(file.Syntax.WithChange(new LinePosition(line, edit.Place.Span.Start), new LinePosition(line, edit.Place.Span.End), edit.NewText))
            : null;

    private ImmutableArray<Finding> Before(FileId file)
    {
        if (!before.TryGetValue(file, out var found))
        {
            before[file] = found = analysis.Findings(file).Remaining;
        }

        return found;
    }
}

/// <summary>What a change leaves.</summary>
/// <param name="IsCured">The finding is gone.</param>
/// <param name="NewErrors">Slugs.</param>
/// <param name="NewWarnings">Slugs.</param>
/// <param name="Study">The rig or trip of the finding as it is then.</param>
internal sealed record Outcome(bool IsCured, ImmutableArray<string> NewErrors, ImmutableArray<string> NewWarnings, Study? Study)
{
    public static Outcome Impossible { get; } = new(false, [], [], null);
}
