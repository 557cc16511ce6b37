using System.Collections.Immutable;
using RigLang.Syntax.Checks;

namespace RigLang.Syntax.Tree;

/// <summary>
/// An opening line (or a <c>use</c>, a <c>language</c> line, or text before the first opening) with all lines up to the next one in the first column.
/// It doesn't know where in the file it stands: a declaration whose lines are all the same objects is the same object.
/// </summary>
public sealed class DeclarationSyntax
{
    internal DeclarationSyntax(
        ImmutableArray<LineSyntax> lines, StatementSyntax? head, ImmutableArray<NodeSyntax> nodes, ImmutableArray<(int Line, LineFinding Finding)> findings)
    {
        Lines = lines;
        Head = head;
        Nodes = nodes;
        Findings = findings;
    }

    public ImmutableArray<LineSyntax> Lines { get; }

    /// <summary><see cref="OpeningSyntax"/>, <see cref="UseSyntax"/>, <see cref="LanguageSyntax"/>, or null for lines before the first of these.
    /// A first-column fact (a forgotten indent) stays with the declaration above it, as a node.</summary>
    public StatementSyntax? Head { get; }

    public OpeningSyntax? Opening => Head as OpeningSyntax;

    /// <summary>The statements under the head, nested by indentation.</summary>
    public ImmutableArray<NodeSyntax> Nodes { get; }

    /// <summary>What is wrong with a line only because of its neighbours (its indent), with the line counted from the declaration's first. The lines' own findings are in them.</summary>
    public ImmutableArray<(int Line, LineFinding Finding)> Findings { get; }

    /// <summary>Both kinds of findings, line by line, with the line counted from the declaration's first.</summary>
    public IEnumerable<(int Line, LineFinding Finding)> AllFindings()
    {
        var next = 0;
        for (var line = 0; line < Lines.Length; line++)
        {
            foreach (var finding in Lines[line].Findings)
            {
                yield return (line, finding);
            }

            for (; next < Findings.Length && Findings[next].Line == line; next++)
            {
                yield return Findings[next];
            }
        }
    }
}
