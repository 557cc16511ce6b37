using System.Collections.Immutable;
using RigLang.Model.Linking;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Outlining;

/// <summary>Which lines belong together.</summary>
internal static class Stretches
{
    /// <summary>What folds: declarations, blocks and runs of comment lines.</summary>
    public static ImmutableArray<FoldStretch> Folds(RigFile file)
    {
        var folds = ImmutableArray.CreateBuilder<FoldStretch>();
        for (var index = 0; index < file.Declarations.Length; index++)
        {
            var (syntax, first) = (file.Declarations[index].Syntax, file.Syntax.FirstLines[index]);
            if (syntax.Head is OpeningSyntax)
            {
                Add(folds, first, first + LastStatement(syntax));
            }

            AddBlocks(folds, first, syntax.Nodes);
        }

        AddComments(folds, file.Syntax);
        return [.. folds.OrderBy(fold => fold.FirstLine).ThenByDescending(fold => fold.LastLine)];
    }

    /// <summary>The last line of a declaration that says something; comments and blank lines behind it belong to what follows.</summary>
    public static int LastStatement(DeclarationSyntax declaration)
    {
        var last = declaration.Lines.Length - 1;
        while (last > 0 && declaration.Lines[last].Statement is null)
        {
            last--;
        }

        return last;
    }

    /// <summary>The last line below a node, or its own.</summary>
    public static int LastLine(NodeSyntax node)
    {
        while (node.Children is [.., var last])
        {
            node = last;
        }

        return node.Line;
    }

    private static void AddBlocks(ImmutableArray<FoldStretch>.Builder folds, int first, ImmutableArray<NodeSyntax> nodes)
    {
        foreach (var node in nodes)
        {
            Add(folds, first + node.Line, first + LastLine(node));
            AddBlocks(folds, first, node.Children);
        }
    }

    private static void AddComments(ImmutableArray<FoldStretch>.Builder folds, FileSyntax file)
    {
        for (var line = 0; line < file.Lines.Length; line++)
        {
            var first = line;
            while (line < file.Lines.Length && file.Lines[line] is { Statement: null, Comment: not null })
            {
                line++;
            }

            if (line - first > 1)
            {
                folds.Add(new FoldStretch(first, line - 1, IsComment: true));
            }
        }
    }

    private static void Add(ImmutableArray<FoldStretch>.Builder folds, int first, int last)
    {
        if (last > first)
        {
            folds.Add(new FoldStretch(first, last, IsComment: false));
        }
    }
}
