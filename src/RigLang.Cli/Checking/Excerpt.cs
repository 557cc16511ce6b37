using System.Text;
using RigLang.Cli.Terminals;
using RigLang.Syntax;

namespace RigLang.Cli.Checking;

/// <summary>A line of a file with a run of carets under a stretch of it. Of a long line only the surroundings of the stretch are shown.</summary>
/// <param name="Text">The line, with marks where something was left out.</param>
/// <param name="Before">Columns before the first caret.</param>
/// <param name="Length">How many carets; at least one.</param>
public sealed record Excerpt(string Text, int Before, int Length)
{
    private const char Mark = '…';
    private const int TabWidth = 4;

    /// <param name="line">The line, without its break.</param>
    /// <param name="span">What the carets stand under; empty for a place between two characters.</param>
    /// <param name="width">The most columns.</param>
    public static Excerpt Of(string line, TextSpan span, int width)
    {
        var start = Math.Clamp(span.Start, 0, line.Length);
        var end = Math.Clamp(span.End, start, line.Length);
        var from = line.Length <= width ? 0 : Math.Max(0, Math.Min(start - (width / 3), line.Length - width));
        if (from > 0 && char.IsLowSurrogate(line[from]))
        {
            from--;
        }

        var (shown, before, length) = (new StringBuilder(), 0, 0);
        var columns = 0;
        if (from > 0)
        {
            shown.Append(Mark);
            columns = 1;
        }

        var at = from;
        while (at < line.Length)
        {
            var (text, units) = Next(line, at, columns);
            var size = Cells.Width(text);
            // One column is kept for the mark, unless this is all there is.
            if (columns + size > width - (at + units < line.Length ? 1 : 0))
            {
                shown.Append(Mark);
                columns++;
                break;
            }

            before += at < start ? size : 0;
            length += at >= start && at < end ? size : 0;
            shown.Append(text);
            columns += size;
            at += units;
        }

        before += from > 0 ? 1 : 0;
        return new Excerpt(shown.ToString(), Math.Min(before, width - 1), Math.Clamp(length, 1, Math.Max(1, width - before)));
    }

    private static (string Text, int Units) Next(string line, int at, int column)
    {
        if (line[at] == '\t')
        {
            return (new string(' ', TabWidth - (column % TabWidth)), 1);
        }

        if (Rune.TryGetRuneAt(line, at, out var rune) && !(rune.IsBmp && Cells.IsHidden((char)rune.Value)))
        {
            return (rune.ToString(), rune.Utf16SequenceLength);
        }

        return ("\uFFFD", 1);
    }
}
