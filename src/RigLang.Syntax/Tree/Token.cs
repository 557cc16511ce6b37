namespace RigLang.Syntax.Tree;

/// <summary>A word of the line with its place, counted from the line's first character. <paramref name="Text"/> is as typed, save that a
/// name is in its one spelling: accented letters composed (see <see cref="Names.Compose"/>), and a misspelt name as it should be written (<c>Front_Axle</c> is
/// reported and read as <c>front-axle</c>). So the length of the text can differ from that of the span.</summary>
public readonly record struct Token(TextSpan Span, string Text)
{
    public override string ToString() => Text;
}
