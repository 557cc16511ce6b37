using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Formatting;

/// <summary>At which level each line of a declaration belongs; null where a line stays as it is.</summary>
internal static class IndentPlan
{
    public static int?[] Of(DeclarationSyntax declaration)
    {
        var levels = new int?[declaration.Lines.Length];
        if (IsUncertain(declaration))
        {
            return levels;
        }

        if (declaration.Head is not null)
        {
            levels[0] = 0;
        }

        var open = new Stack<(NodeSyntax Node, int Level)>(declaration.Nodes.Reverse().Select(node => (node, 1)));
        while (open.TryPop(out var next))
        {
            levels[next.Node.Line] = next.Level;
            foreach (var child in next.Node.Children)
            {
                open.Push((child, next.Level + 1));
            }
        }

        PlaceComments(declaration, levels);
        return levels;
    }

    /// <summary>Where one indent is wrong, setting the others could give the line to another owner; then all stay as they are.</summary>
    private static bool IsUncertain(DeclarationSyntax declaration) =>
        declaration.Findings.Length > 0 || declaration.Lines.Any(line => line.Statement is FactSyntax && line.IndentColumns == 0);

    /// <summary>A line that is only a comment goes with the statement below it that stands in the same column, or else with the one above.</summary>
    private static void PlaceComments(DeclarationSyntax declaration, int?[] levels)
    {
        var lines = declaration.Lines;
        int? below = null;
        var above = new int?[lines.Length];
        for (int i = 0, last = -1; i < lines.Length; i++)
        {
            above[i] = last < 0 ? null : last;
            last = lines[i].Statement is null ? last : i;
        }

        for (var i = lines.Length - 1; i >= 0; i--)
        {
            if (lines[i].Statement is not null)
            {
                below = i;
            }
            else if (lines[i].Comment is not null)
            {
                var match = Matches(i, below) ? below : Matches(i, above[i]) ? above[i] : null;
                levels[i] = match is { } line ? levels[line] : lines[i].IndentColumns == 0 ? 0 : null;
            }
        }

        bool Matches(int comment, int? statement) => statement is { } line && lines[line].IndentColumns == lines[comment].IndentColumns && levels[line] is not null;
    }
}
