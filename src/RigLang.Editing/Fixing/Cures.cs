using System.Collections.Immutable;
using RigLang.Model.Files;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Fixing;

/// <summary>What cures findings: those at hand, all of a kind, and all that is merely written wrong.</summary>
internal static class Cures
{
    public static IEnumerable<OfferedChange> Of(IReadOnlyList<EditorFinding> here, ImmutableArray<EditorFinding> all)
    {
        // One fix may cure several findings, and stands in the list once.
        foreach (var group in here.SelectMany(finding => finding.Fixes.Select(fix => (Fix: fix, Finding: finding))).GroupBy(pair => pair.Fix, FixComparer.Same))
        {
            yield return new OfferedChange(group.Key.Title, ChangeSort.Cure, () => group.Key.Edits)
            {
                IsPreferred = group.Key.IsPreferred,
                Cures = [.. group.Select(pair => pair.Finding)],
            };
        }

        foreach (var check in here.Where(IsSettled).Select(finding => finding.Check).Distinct())
        {
            var alike = all.Where(finding => finding.Check == check && IsSettled(finding)).ToList();
            if (alike.Count > 1)
            {
                yield return new OfferedChange($"Mend every `{check.Slug}` in this file ({alike.Count})", ChangeSort.CureAlike, () => Together(alike)) { Cures = [.. alike] };
            }
        }
    }

    /// <summary>Only what is written wrong and can mean one thing alone: safe to do unasked, as when a file is saved.</summary>
    public static IEnumerable<OfferedChange> OfFile(ImmutableArray<EditorFinding> all)
    {
        var settled = all.Where(finding => WritingChecks.All.Contains(finding.Check) && IsSettled(finding)).ToList();
        if (settled.Count > 0)
        {
            yield return new OfferedChange("Mend whatever is written wrong and can mean one thing only", ChangeSort.CureFile, () => Together(settled)) { Cures = [.. settled] };
        }
    }

    /// <summary>There is one way to mend it, and it stays in the finding's own file.</summary>
    private static bool IsSettled(EditorFinding finding) =>
        finding.Fixes is [{ Edits: [var first, ..] edits }] && edits.All(edit => edit.Place.File == first.Place.File);

    /// <summary>All their edits, without those of a fix that touches what another one changes already.</summary>
    private static ImmutableArray<(FilePlace Place, string NewText)> Together(IEnumerable<EditorFinding> findings)
    {
        var taken = ImmutableArray.CreateBuilder<(FilePlace Place, string NewText)>();
        var byLine = new Dictionary<int, List<LineRange>>();
        foreach (var edits in findings.Select(finding => finding.Fixes[0].Edits))
        {
            if (edits.Any(edit => LinesOf(edit.Place.Range).Any(line => byLine.TryGetValue(line, out var others) && others.Exists(other => Touch(edit.Place.Range, other)))))
            {
                continue;
            }

            taken.AddRange(edits);
            foreach (var range in edits.Select(edit => edit.Place.Range))
            {
                foreach (var line in LinesOf(range))
                {
                    (byLine.TryGetValue(line, out var others) ? others : byLine[line] = []).Add(range);
                }
            }
        }

        return taken.DrainToImmutable();
    }

    private static IEnumerable<int> LinesOf(LineRange range) => Enumerable.Range(range.Start.Line, range.End.Line - range.Start.Line + 1);

    private static bool Touch(LineRange one, LineRange other) => one.Start <= other.End && other.Start <= one.End;

    private sealed class FixComparer : IEqualityComparer<EditorFix>
    {
        public static FixComparer Same { get; } = new();

        public bool Equals(EditorFix? one, EditorFix? other) => one?.Title == other?.Title && one is not null && other is not null && one.Edits.AsSpan().SequenceEqual(other.Edits.AsSpan());

        public int GetHashCode(EditorFix fix) => fix.Title.GetHashCode(StringComparison.Ordinal);
    }
}
