using RigLang.Model.Files;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>
/// A stretch of one line, told from the declaration that holds it, so that it stays right when lines above are added or taken away.
/// <see cref="Line"/> is counted from the declaration's first line, the span from the line's first character.
/// </summary>
public readonly record struct Place(FileId File, DeclarationSyntax Declaration, int Line, TextSpan Span)
{
    /// <summary>The text there.</summary>
    public string Text => Declaration.Lines[Line].TextOf(Span);

    /// <summary>The place behind the last character of the line.</summary>
    public Place EndOfLine => this with { Span = new TextSpan(Declaration.Lines[Line].Text.Length, 0) };

    /// <summary>Written out, since a record would print its places within places without end.</summary>
    public override string ToString() => $"{File.Path}, line {Line} of its declaration, {Span.Start} to {Span.End}";
}
