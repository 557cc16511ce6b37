using System.Collections.Immutable;

namespace RigLang.Syntax.Tree;

/// <summary>
/// A file as a tree: lossless (<see cref="ToString"/> gives back the text) and immutable. <see cref="WithChange"/> makes the next state and
/// keeps every line and declaration that the change leaves alone.
/// </summary>
public sealed partial class FileSyntax
{
    /// <summary>Every line of the file; at least one.</summary>
    public ImmutableArray<LineSyntax> Lines { get; private init; }

    public ImmutableArray<DeclarationSyntax> Declarations { get; private init; }

    /// <summary>The line number (from 0) where the declaration of the same index begins.</summary>
    public ImmutableArray<int> FirstLines { get; private init; }

    /// <summary>Reads any text; never fails.</summary>
    public static FileSyntax Parse(string text) => throw new NotImplementedException();

    /// <summary>The same file with the text of a range replaced; a range outside the file is cut to it.</summary>
    public FileSyntax WithChange(LinePosition start, LinePosition end, string newText) => throw new NotImplementedException();

    /// <summary>The index of the declaration that holds the line.</summary>
    public int DeclarationAt(int line) => throw new NotImplementedException();

    /// <summary>The file's text, to the letter.</summary>
    public override string ToString() => throw new NotImplementedException();
}
