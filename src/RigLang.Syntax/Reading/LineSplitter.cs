using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Reading;

/// <summary>Cuts text at CR LF, LF and CR, and nowhere else: the breaks that editors count.</summary>
internal static class LineSplitter
{
    /// <summary>The lines of the text; behind a break there is always one more line, if need be an empty one.</summary>
    public static List<(string Text, LineBreak Break)> Split(string text)
    {
        var lines = new List<(string, LineBreak)>();
        var start = 0;
        while (true)
        {
            var length = text.AsSpan(start).IndexOfAny('\r', '\n');
            if (length < 0)
            {
                lines.Add((text[start..], LineBreak.None));
                return lines;
            }

            var end = start + length;
            var lineBreak = text[end] == '\n' ? LineBreak.LineFeed
                : end + 1 < text.Length && text[end + 1] == '\n' ? LineBreak.CarriageReturnLineFeed
                : LineBreak.CarriageReturn;
            lines.Add((text[start..end], lineBreak));
            start = end + (lineBreak == LineBreak.CarriageReturnLineFeed ? 2 : 1);
        }
    }

    public static string TextOf(LineBreak lineBreak) => lineBreak switch
    {
        LineBreak.LineFeed => "\n",
        LineBreak.CarriageReturn => "\r",
        LineBreak.CarriageReturnLineFeed => "\r\n",
        _ => "",
    };
}
