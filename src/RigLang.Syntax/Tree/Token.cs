namespace RigLang.Syntax.Tree;

/// <summary>A word of the line with its place, counted from the line's first character. <paramref name="Text"/> is as typed.</summary>
public readonly record struct Token(TextSpan Span, string Text)
{
    public override string ToString() => Text;
}
