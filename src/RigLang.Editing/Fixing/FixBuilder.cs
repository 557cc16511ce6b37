using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Editing.Outlining;
using RigLang.Editing.Reporting;
using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Fixing;

/// <summary>Changes offered for a stretch of a file: what cures its findings, then what accepts them with a reason, then another way to write a quantity.</summary>
internal static class FixBuilder
{
    public static ImmutableArray<EditorFix> Of(EditorState state, FileId file, LineRange range, CancellationToken cancel)
    {
        if (state.Workspace.Find(file) is not { } found)
        {
            return [];
        }

        var findings = FindingReport.Of(state, file, cancel).Where(finding => finding.Range.Start <= range.End && finding.Range.End >= range.Start).ToList();
        var fixes = findings.SelectMany(finding => finding.Fixes).Concat(findings.Where(finding => finding.Check.CanBeAllowed).Select(finding => finding.Check).Distinct().Select(check => Accept(found, range.Start, check)).OfType<EditorFix>());
        return [.. fixes, .. Converted(state, found, range)];
    }

    /// <summary>A line of the declaration that accepts the finding; its author writes the reason between the quotes.</summary>
    private static EditorFix? Accept(RigFile file, LinePosition position, CheckDeclaration check)
    {
        var index = file.Syntax.DeclarationAt(position.Line);
        var syntax = file.Declarations[index].Syntax;
        if (file.Declarations[index].Kind is null)
        {
            return null;
        }

        var last = Stretches.LastStatement(syntax);
        var indent = syntax.Nodes is [var first, ..] ? syntax.Lines[first.Line].Text[..syntax.Lines[first.Line].IndentLength] : "    ";
        var end = new LinePosition(file.Syntax.FirstLines[index] + last, syntax.Lines[last].Text.Length);
        var text = $"{FixEdits.BreakOf(file.Syntax)}{indent}{EverywhereFacts.Allow.Keyword} {check.Slug} because \"\"";
        return new EditorFix($"Accept `{check.Slug}` with a reason", [(new FilePlace(file.Id, new LineRange(end, end)), text)], IsPreferred: false);
    }

    /// <summary>A quantity at the caret in a unit of the other system. Sums stay sums, so they aren't offered.</summary>
    private static IEnumerable<EditorFix> Converted(EditorState state, RigFile file, LineRange range)
    {
        if (Spot.At(state, file.Id, range.Start) is not { Fact: { } line } spot)
        {
            yield break;
        }

        foreach (var value in line.Values.Values.OfType<MeasureValue>().Where(value => value.Span.Touches(range.Start.Character)))
        {
            var isPlain = spot.Statement!.Arguments.OfType<MeasureSyntax>().Any(syntax => syntax.Span == value.Span && syntax.Terms is [{ Count: null, IsNegative: false }]);
            if (isPlain && QuantityWriter.WriteInOtherSystem(value.Measure) is { } other)
            {
                yield return new EditorFix($"Convert to {other}", [(new FilePlace(file.Id, spot.RangeOf(value.Span)), other)], IsPreferred: false);
            }
        }
    }
}
