using System.Collections.Immutable;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Formatting;

namespace RigLang.Editing.Formatting;

/// <summary>The formatter's lines as the smallest replacements.</summary>
internal static class FormatEdits
{
    public static ImmutableArray<TextReplacement> Of(RigFile file, LineRange? range)
    {
        var edits = range is { } stretch ? Formatter.Format(file.Syntax, stretch.Start.Line, LastLine(stretch)) : Formatter.Format(file.Syntax);
        return [.. edits.Select(edit => Smallest(edit, file.Syntax.Lines[edit.Line].Text))];
    }

    /// <summary>A selection that ends before a line's first character doesn't mean that line.</summary>
    private static int LastLine(LineRange range) => range.End.Character == 0 && range.End.Line > range.Start.Line ? range.End.Line - 1 : range.End.Line;

    private static TextReplacement Smallest(LineEdit edit, string old)
    {
        var same = 0;
        while (same < old.Length && same < edit.NewText.Length && old[same] == edit.NewText[same])
        {
            same++;
        }

        var behind = 0;
        while (behind < old.Length - same && behind < edit.NewText.Length - same && old[^(behind + 1)] == edit.NewText[^(behind + 1)])
        {
            behind++;
        }

        var range = new LineRange(new LinePosition(edit.Line, same), new LinePosition(edit.Line, old.Length - behind));
        return new TextReplacement(range, edit.NewText[same..^behind]);
    }
}
