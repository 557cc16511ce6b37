namespace RigLang.Syntax;

/// <summary>A stretch of text, counted in UTF-16 units from the start of whatever owns it (a line, or a file).</summary>
public readonly record struct TextSpan(int Start, int Length)
{
    public int End => Start + Length;

    public static TextSpan FromBounds(int start, int end) => new(start, end - start);

    /// <summary>True from the first unit up to and including the place behind the last: where a caret counts as being "on" the text.</summary>
    public bool Touches(int position) => position >= Start && position <= End;

    public TextSpan Shift(int by) => new(Start + by, Length);
}
