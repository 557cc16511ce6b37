using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Linking;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Locating;

/// <summary>Ways from a line of a declaration to what it says.</summary>
internal static class NodePath
{
    /// <summary>The nodes on the way to the line's own, outermost first; empty when the line has none.</summary>
    public static ImmutableArray<NodeSyntax> To(DeclarationSyntax declaration, int line) => Find(declaration.Nodes, line) ?? [];

    /// <summary>The fact that the line of a declaration's own text says, and the block that has it.</summary>
    public static (Block? Block, Fact? Fact) FactAt(Declaration declaration, int line)
    {
        foreach (var block in declaration.Block.WithInner())
        {
            foreach (var fact in block.Facts)
            {
                if (fact.Place.Line == line && fact.Place.Declaration == declaration.Own.Syntax)
                {
                    return (block, fact);
                }
            }
        }

        return (null, null);
    }

    private static ImmutableArray<NodeSyntax>? Find(ImmutableArray<NodeSyntax> nodes, int line)
    {
        // Nodes stand in the order of their lines, so the line's own is below the last that begins at it or before.
        for (var index = nodes.Length - 1; index >= 0; index--)
        {
            if (nodes[index].Line == line)
            {
                return [nodes[index]];
            }

            if (nodes[index].Line < line)
            {
                return Find(nodes[index].Children, line) is { } below ? below.Insert(0, nodes[index]) : null;
            }
        }

        return null;
    }
}
