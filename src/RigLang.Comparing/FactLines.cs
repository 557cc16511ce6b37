using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Linking;
using RigLang.Syntax.Tree;

namespace RigLang.Comparing;

/// <summary>The text of a line with all that is indented under it, and how to put it into another state.</summary>
internal static class FactLines
{
    private const int UsualIndent = 4;

    /// <summary>The line and those under it, blank lines at the end left out.</summary>
    public static ImmutableArray<LineSyntax> Of(Fact line)
    {
        var (start, count) = Extent(line.Place.Declaration, line.Place.Line);
        return line.Place.Declaration.Lines.Slice(start, count);
    }

    public static Step Remove(Fact line)
    {
        var (start, count) = Extent(line.Place.Declaration, line.Place.Line);
        return new LineStep(line.Place.File, line.Place.Declaration, start, count, []);
    }

    /// <summary>Only the line itself: what is under it is compared by itself.</summary>
    public static Step Replace(Fact was, Fact line)
    {
        var old = was.Place.Declaration.Lines[was.Place.Line];
        var now = line.Place.Declaration.Lines[line.Place.Line];
        return new LineStep(was.Place.File, was.Place.Declaration, was.Place.Line, 1, [old.Text[..old.IndentLength] + now.Text[now.IndentLength..]]);
    }

    /// <param name="declaration">As it was before.</param>
    /// <param name="block">The block of it, before, in which the lines are wanted.</param>
    /// <param name="above">The line of the block behind which they go; null for its beginning.</param>
    /// <param name="lines">From the state after.</param>
    public static Step Insert(Declaration declaration, Block block, Fact? above, ImmutableArray<LineSyntax> lines)
    {
        // What is inherited stands in another declaration; lines put there are inherited as well.
        var (file, syntax) = (above ?? block.Opener)?.Place is { } place ? (place.File, place.Declaration) : (declaration.Own.File, declaration.Own.Syntax);
        var opener = block.Opener?.Place is { } opening && opening.Declaration == syntax ? opening.Line : 0;
        var at = opener + 1;
        if (above is not null)
        {
            var (start, count) = Extent(syntax, above.Place.Line);
            at = start + count;
        }

        var sibling = above ?? block.Facts.FirstOrDefault(fact => fact.Place.Declaration == syntax);
        var indent = sibling?.Place.Line is { } line ? syntax.Lines[line].Text[..syntax.Lines[line].IndentLength] : syntax.Lines[opener].Text[..syntax.Lines[opener].IndentLength] + new string(' ', UsualIndent);
        return new LineStep(file, syntax, at, 0, [.. Shifted(lines, indent)]);
    }

    /// <summary>The whole declaration, without blank lines at its end.</summary>
    public static string TextOf(Declaration declaration)
    {
        var lines = declaration.Own.Syntax.Lines;
        return string.Join('\n', lines.Take(EndOf(lines, 0)).Select(line => line.Text)) + "\n";
    }

    public static Step Remove(Declaration declaration) =>
        new LineStep(declaration.Own.File, declaration.Own.Syntax, 0, EndOf(declaration.Own.Syntax.Lines, 0), []);

    private static IEnumerable<string> Shifted(ImmutableArray<LineSyntax> lines, string indent)
    {
        var own = lines[0].IndentLength;
        return lines.Select(line => line.Statement is null && line.Comment is null ? "" : indent + line.Text[Math.Min(own, line.IndentLength)..]);
    }

    private static (int Start, int Count) Extent(DeclarationSyntax declaration, int start)
    {
        var lines = declaration.Lines;
        var end = start + 1;
        while (end < lines.Length && (lines[end].Statement is null || lines[end].IndentColumns > lines[start].IndentColumns))
        {
            end++;
        }

        return (start, EndOf(lines[..end], start) - start);
    }

    /// <summary>The index behind the last line that holds a statement; at least one behind the first.</summary>
    private static int EndOf(ImmutableArray<LineSyntax> lines, int first)
    {
        var end = lines.Length;
        while (end > first + 1 && lines[end - 1].Statement is null)
        {
            end--;
        }

        return end;
    }
}
