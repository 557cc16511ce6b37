namespace RigLang.Syntax.Scanning;

/// <summary>What of an endless line isn't read any more: everything up to its comment or its end.</summary>
/// <param name="Span">The rest without the blanks at its end.</param>
/// <param name="Next">Where the comment begins, or the line's end.</param>
internal readonly record struct LineRest(TextSpan Span, int Next)
{
    /// <param name="text">The line.</param>
    /// <param name="from">The first character of the rest, no blank.</param>
    public static LineRest From(string text, int from)
    {
        var at = from;
        for (var inText = false; at < text.Length; at++)
        {
            inText ^= text[at] == '"';
            if (text[at] == '#' && !inText && at > from && Characters.IsBlank(text[at - 1]))
            {
                break;
            }
        }

        var end = at;
        while (Characters.IsBlank(text[end - 1]))
        {
            end--;
        }

        return new LineRest(TextSpan.FromBounds(from, end), at);
    }
}
