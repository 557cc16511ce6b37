using RigLang.Syntax;

namespace RigLang.Editing.Tests.Support;

/// <summary>
/// A text with marks in it: <c>$0</c> where the caret stands, and lines of <c>^^^ words</c> under the stretch that the words are about. The marks are taken out.
/// </summary>
internal sealed class MarkedText
{
    private MarkedText(string text, LinePosition? caret, IReadOnlyList<(LineRange Range, string Words)> marks)
    {
        Text = text;
        Caret = caret;
        Marks = marks;
    }

    public string Text { get; }

    public LinePosition? Caret { get; }

    public IReadOnlyList<(LineRange Range, string Words)> Marks { get; }

    public LinePosition At => Caret ?? throw new InvalidOperationException("the text has no $0");

    public static MarkedText Parse(string marked)
    {
        var lines = new List<string>();
        var marks = new List<(LineRange, string)>();
        LinePosition? caret = null;
        foreach (var line in marked.ReplaceLineEndings("\n").Split('\n'))
        {
            if (line.TrimStart(' ', '#') is ['^', ..] trimmed)
            {
                var start = line.IndexOf('^', StringComparison.Ordinal);
                var end = start + trimmed.Length - trimmed.TrimStart('^').Length;
                marks.Add((new LineRange(new LinePosition(lines.Count - 1, start), new LinePosition(lines.Count - 1, end)), trimmed.TrimStart('^').Trim()));
                continue;
            }

            var text = line;
            if (text.IndexOf("$0", StringComparison.Ordinal) is var at and >= 0)
            {
                caret = new LinePosition(lines.Count, at);
                text = text.Remove(at, 2);
            }

            lines.Add(text);
        }

        return new MarkedText(string.Join("\n", lines), caret, marks);
    }
}
