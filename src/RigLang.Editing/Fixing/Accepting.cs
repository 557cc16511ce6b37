using RigLang.Editing.Outlining;
using RigLang.Editing.Reporting;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Fixing;

/// <summary>A line of the declaration that accepts a finding; its author writes the reason between the quotes.</summary>
internal static class Accepting
{
    public static IEnumerable<OfferedChange> Of(RigFile file, LineRange range, IReadOnlyList<EditorFinding> here) =>
        here.Where(finding => finding.Check.CanBeAllowed).GroupBy(finding => finding.Check)
            .Select(group => Of(file, range.Start, group.Key, [.. group])).OfType<OfferedChange>();

    private static OfferedChange? Of(RigFile file, LinePosition position, CheckDeclaration check, EditorFinding[] findings)
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
        return new OfferedChange($"Accept `{check.Slug}` with a reason", ChangeSort.Accept, new FilePlace(file.Id, new LineRange(end, end)), text) { Cures = [.. findings] };
    }
}
