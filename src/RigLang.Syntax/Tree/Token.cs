namespace RigLang.Syntax.Tree;

/// <summary>A word of the line with its place, counted from the line's first character. <paramref name="Text"/> is as typed, save that
/// the accented letters of names are composed (see <see cref="Names.Compose"/>), so that two spellings of one name are the same text.</summary>
public readonly record struct Token(TextSpan Span, string Text)
{
    public override string ToString() => Text;
}
