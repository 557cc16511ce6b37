using System.Collections.Immutable;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Reading;

/// <summary>
/// Nests the lines of a declaration by their indents. A stack of open nodes stands in for recursion, and nodes deeper than any meaning are
/// laid side by side, so no file can make the tree so deep that walking it fails.
/// </summary>
internal sealed class BlockReader
{
    /// <summary>Below the head: facts and blocks, then facts of a block.</summary>
    private const int DeepestMeaning = 2;

    /// <summary>How deep the tree gets whatever the file says.</summary>
    private const int DeepestNode = 5;

    private readonly List<Open> open = [];
    private readonly ImmutableArray<(int Line, LineFinding Finding)>.Builder findings = ImmutableArray.CreateBuilder<(int, LineFinding)>();

    public static DeclarationSyntax Read(ImmutableArray<LineSyntax> lines)
    {
        var reader = new BlockReader();
        var begins = BeginsDeclaration(lines[0]);
        reader.open.Add(new Open(-1, -1, null));
        for (var i = begins ? 1 : 0; i < lines.Length; i++)
        {
            if (lines[i].Statement is FactSyntax fact)
            {
                reader.Add(i, lines[i], fact);
            }
        }

        reader.CloseDownTo(0);
        return new DeclarationSyntax(lines, begins ? lines[0].Statement : null, reader.open[0].Children.ToImmutable(), reader.findings.ToImmutable());
    }

    public static bool BeginsDeclaration(LineSyntax line) => line.Statement is OpeningSyntax or UseSyntax or LanguageSyntax;

    private void Add(int index, LineSyntax line, FactSyntax fact)
    {
        var column = line.IndentColumns;
        if (column == 0)
        {
            CloseDownTo(0);
            column = open[0].ChildColumn > 0 && !CanBeBlock(fact) ? open[0].ChildColumn : 0;
        }
        else
        {
            column = Place(index, line, column);
        }

        if (open.Count > DeepestMeaning)
        {
            findings.Add((index, NestedTooDeep.Of(line, open[DeepestMeaning].Column)));
        }

        if (open.Count > DeepestNode)
        {
            CloseDownTo(DeepestNode - 1);
        }

        if (open[^1].ChildColumn < 0 && line.IndentColumns > 0)
        {
            open[^1].ChildColumn = column;
        }

        open.Add(new Open(index, column, fact));
    }

    /// <summary>Closes what this line is not a part of, and answers the column that it counts as.</summary>
    private int Place(int index, LineSyntax line, int column)
    {
        var closed = false;
        while (open[^1].Column >= column)
        {
            closed = true;
            CloseDownTo(open.Count - 2);
        }

        var siblings = open[^1].ChildColumn;
        if (siblings < 0 || siblings == column || (!closed && siblings < column))
        {
            return column;
        }

        findings.Add((index, IndentMatchesNothing.Of(line, siblings, open[^1].Column)));
        return siblings;
    }

    private void CloseDownTo(int last)
    {
        while (open.Count > last + 1)
        {
            var done = open[^1];
            open.RemoveAt(open.Count - 1);
            open[^1].Children.Add(new NodeSyntax(done.Line, done.Fact!, done.Children.ToImmutable()));
        }
    }

    /// <summary>The head of a block is a word with at most names and a title behind it.</summary>
    private static bool CanBeBlock(FactSyntax fact) => fact.Arguments.All(argument => argument is WordSyntax or TextSyntax);

    private sealed class Open(int line, int column, FactSyntax? fact)
    {
        public int Line { get; } = line;

        public int Column { get; } = column;

        /// <summary>The column of the first child; below 0 before there is one.</summary>
        public int ChildColumn { get; set; } = -1;

        public FactSyntax? Fact { get; } = fact;

        public ImmutableArray<NodeSyntax>.Builder Children { get; } = ImmutableArray.CreateBuilder<NodeSyntax>(0);
    }
}
