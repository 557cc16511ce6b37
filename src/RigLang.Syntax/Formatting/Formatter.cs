using System.Collections.Immutable;
using System.Text;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Reading;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Formatting;

/// <summary>
/// Sets indents, takes tabs and trailing blanks out, and ends the file with a line break. It moves no columns: how values are aligned is the author's, and a
/// change to one line never changes another. A line with an error gets its indent like the others (else it would change its owner) and is left alone otherwise. Before it answers it reads its own work again and drops every line in which an atom or a comment came out different.
/// </summary>
public static class Formatter
{
    private const int LevelWidth = 4;

    /// <summary>The lines that change; none for a file that is as it should be.</summary>
    public static ImmutableArray<LineEdit> Format(FileSyntax file) => Format(file, 0, file.Lines.Length - 1);

    /// <summary>The same for the lines from first to last only (counted from 0, both included).</summary>
    public static ImmutableArray<LineEdit> Format(FileSyntax file, int firstLine, int lastLine)
    {
        var edits = ImmutableArray.CreateBuilder<LineEdit>();
        firstLine = Math.Max(firstLine, 0);
        lastLine = Math.Min(lastLine, file.Lines.Length - 1);
        for (var i = file.DeclarationAt(firstLine); i < file.Declarations.Length && file.FirstLines[i] <= lastLine; i++)
        {
            var declaration = file.Declarations[i];
            var indents = IndentPlan.Of(declaration);
            for (var line = Math.Max(0, firstLine - file.FirstLines[i]); line < declaration.Lines.Length && file.FirstLines[i] + line <= lastLine; line++)
            {
                var old = declaration.Lines[line];
                var text = Rewrite(old, indents[line] * LevelWidth);
                if (file.FirstLines[i] + line == file.Lines.Length - 1 && text.Length > 0)
                {
                    text += LineSplitter.TextOf(file.Lines[0].Break == LineBreak.None ? LineBreak.LineFeed : file.Lines[0].Break);
                }

                if (text != old.Text)
                {
                    edits.Add(new LineEdit(file.FirstLines[i] + line, text));
                }
            }
        }

        return edits.ToImmutable();
    }

    /// <summary>The whole file as the formatter would have it.</summary>
    public static string FormatText(FileSyntax file)
    {
        var edits = Format(file).ToDictionary(edit => edit.Line, edit => edit.NewText);
        var text = new StringBuilder();
        for (var i = 0; i < file.Lines.Length; i++)
        {
            text.Append(edits.TryGetValue(i, out var edited) ? edited : file.Lines[i].Text).Append(LineSplitter.TextOf(file.Lines[i].Break));
        }

        return text.ToString();
    }

    private static string Rewrite(LineSyntax line, int? indent)
    {
        var trimmed = line.Text.TrimEnd(' ', '\t');
        var mark = line.Text.StartsWith('\uFEFF') ? "\uFEFF" : "";
        if (trimmed.Length <= line.IndentLength)
        {
            return mark;
        }

        var written = new StringBuilder(trimmed.Length + 8).Append(mark).Append(' ', indent ?? line.IndentColumns);
        if (line.Findings.Any(finding => finding.Check.Severity == Severity.Error))
        {
            written.Append(trimmed, line.IndentLength, trimmed.Length - line.IndentLength);
        }
        else
        {
            AppendStatement(written, line, trimmed);
        }

        var text = written.ToString();
        return SameAtoms.In(line, text) ? text : line.Text;
    }

    /// <summary>Copies the line behind its indent; a run of blanks that holds a tab becomes as many spaces as it showed, and the keyword gets its blank.</summary>
    private static void AppendStatement(StringBuilder written, LineSyntax line, string trimmed)
    {
        var column = line.IndentColumns;
        var keywordEnd = line.Statement is FactSyntax fact ? fact.Keyword.Span.End : -1;
        var commentStart = line.Comment?.Start ?? int.MaxValue;
        var inText = false;
        for (var at = line.IndentLength; at < trimmed.Length; at++)
        {
            var c = trimmed[at];
            inText ^= c == '"';
            if (at == keywordEnd && c is not (' ' or '\t'))
            {
                written.Append(' ');
            }

            if (c == '\t' && !inText && at < commentStart)
            {
                var width = LevelWidth - (column % LevelWidth);
                written.Append(' ', width);
                column += width;
            }
            else
            {
                written.Append(c);
                column++;
            }
        }
    }
}
