using System.Collections.Immutable;
using System.Text;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Reading;

namespace RigLang.Syntax.Tree;

/// <summary>
/// A file as a tree: lossless (<see cref="ToString"/> gives back the text) and immutable. <see cref="WithChange"/> makes the next state and
/// keeps every line and declaration that the change leaves alone.
/// </summary>
public sealed partial class FileSyntax
{
    private FileSyntax(ImmutableArray<LineSyntax> lines, ImmutableArray<DeclarationSyntax> declarations, ImmutableArray<int> firstLines)
    {
        Lines = lines;
        Declarations = declarations;
        FirstLines = firstLines;
    }

    /// <summary>Every line of the file; at least one.</summary>
    public ImmutableArray<LineSyntax> Lines { get; private init; }

    public ImmutableArray<DeclarationSyntax> Declarations { get; private init; }

    /// <summary>The line number (from 0) where the declaration of the same index begins.</summary>
    public ImmutableArray<int> FirstLines { get; private init; }

    /// <summary>Reads any text; never fails.</summary>
    public static FileSyntax Parse(string text)
    {
        var pieces = LineSplitter.Split(text);
        var lines = ImmutableArray.CreateBuilder<LineSyntax>(pieces.Count);
        foreach (var (piece, lineBreak) in pieces)
        {
            lines.Add(LineReader.Read(piece, lineBreak));
        }

        var all = lines.MoveToImmutable();
        var declarations = ImmutableArray.CreateBuilder<DeclarationSyntax>();
        var firstLines = ImmutableArray.CreateBuilder<int>();
        for (var first = 0; first < all.Length;)
        {
            var end = EndOfDeclaration(all, first);
            firstLines.Add(first);
            declarations.Add(BlockReader.Read(all.Slice(first, end - first)));
            first = end;
        }

        return new FileSyntax(all, declarations.ToImmutable(), firstLines.ToImmutable());
    }

    /// <summary>The index of the declaration that holds the line; a line outside the file counts as its first or last.</summary>
    public int DeclarationAt(int line)
    {
        var index = FirstLines.AsSpan().BinarySearch(line);
        return index >= 0 ? index : Math.Max(0, ~index - 1);
    }

    /// <summary>The nearest place that the file has: no line or character outside it, and none inside a line break.</summary>
    public LinePosition Clamp(LinePosition position) =>
        position.Line < 0 ? default
        : position.Line >= Lines.Length ? new LinePosition(Lines.Length - 1, Lines[^1].Text.Length)
        : position with { Character = Math.Clamp(position.Character, 0, Lines[position.Line].Text.Length) };

    /// <summary>Everything that this floor has to say about the file, line by line (counted from 0).</summary>
    public IEnumerable<(int Line, LineFinding Finding)> Findings()
    {
        for (var i = 0; i < Declarations.Length; i++)
        {
            if (OfOrder(i) is { } late)
            {
                yield return (FirstLines[i], late);
            }

            foreach (var (line, finding) in Declarations[i].AllFindings())
            {
                yield return (FirstLines[i] + line, finding);
            }
        }
    }

    /// <summary>What is wrong with a declaration's first line only because of what stands before it, or null.</summary>
    public LineFinding? OfOrder(int declaration) =>
        declaration > 0 && Declarations[declaration].Head is LanguageSyntax language && !IsFirstStatement(declaration) ? LanguageNotFirst.Of(language.Span) : null;

    /// <summary>The file's text, to the letter.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(Lines.Sum(static line => line.Text.Length + 2));
        foreach (var line in Lines)
        {
            text.Append(line.Text).Append(LineSplitter.TextOf(line.Break));
        }

        return text.ToString();
    }

    private static int EndOfDeclaration(ImmutableArray<LineSyntax> lines, int first)
    {
        var end = first + 1;
        while (end < lines.Length && !BlockReader.BeginsDeclaration(lines[end]))
        {
            end++;
        }

        return end;
    }

    /// <summary>Only comments and blank lines stand before the first declaration with a head.</summary>
    private bool IsFirstStatement(int declaration) => declaration == 1 && Declarations[0].Head is null && Declarations[0].Nodes.IsEmpty;
}
