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

    private readonly List<Open> open = [];
    private readonly ImmutableArray<LineSyntax> lines;
    private readonly IndentTrial trial;

    private BlockReader(ImmutableArray<LineSyntax> lines, IndentTrial trial)
    {
        this.lines = lines;
        this.trial = trial;
    }

    public static DeclarationSyntax Read(ImmutableArray<LineSyntax> lines)
    {
        var trial = IndentTrial.Of(lines);
        var nodes = Lay(lines, trial);
        if (trial.Problems.Count > 0 || trial.HasFactInFirstColumn)
        {
            trial = IndentRepair.Best(trial, better => Lay(lines, better));
            nodes = Lay(lines, trial);
        }

        return new DeclarationSyntax(lines, BeginsDeclaration(lines[0]) ? lines[0].Statement : null, nodes, [.. trial.Findings(lines)]);
    }

    public static bool BeginsDeclaration(LineSyntax line) => line.Statement is OpeningSyntax or UseSyntax or LanguageSyntax;

    /// <summary>Nests the lines by the columns of a trial, which takes down what doesn't fit.</summary>
    private static ImmutableArray<NodeSyntax> Lay(ImmutableArray<LineSyntax> lines, IndentTrial trial)
    {
        var reader = new BlockReader(lines, trial);
        trial.Problems.Clear();
        reader.open.Add(new Open(-1, -1, null));
        for (var i = BeginsDeclaration(lines[0]) ? 1 : 0; i < lines.Length; i++)
        {
            if (lines[i].Statement is FactSyntax fact)
            {
                reader.Add(i, fact);
            }
        }

        reader.CloseDownTo(0);
        return reader.open[0].Children.ToImmutable();
    }

    private void Add(int index, FactSyntax fact)
    {
        var column = trial.Columns[index];
        if (column == 0)
        {
            CloseDownTo(0);
            column = open[0].ChildColumn > 0 && !CanBeBlock(fact) ? open[0].ChildColumn : 0;
        }
        else
        {
            column = Place(index, column);
        }

        var isBlock = Kinds.OpensBlock(fact.Keyword.Text);
        if (open.Count > DeepestMeaning)
        {
            Note(IndentProblemKind.TooDeep, isBlock, index, open[isBlock ? 1 : DeepestMeaning].Column);
            column = open[DeepestMeaning].Column; // read with the block's facts, where it can't but belong
            CloseDownTo(DeepestMeaning - 1);
        }
        else if (open.Count > 1 && (isBlock || IsNoBlock(open[^1].Fact!)))
        {
            Note(IndentProblemKind.OutOfPlace, isBlock, index, 0);
        }

        if (open[^1].ChildColumn < 0 && trial.Columns[index] > 0)
        {
            open[^1].ChildColumn = column;
        }

        open.Add(new Open(index, column, fact));
    }

    /// <summary>Closes what this line is not a part of, and answers the column that it counts as.</summary>
    private int Place(int index, int column)
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

        Note(IndentProblemKind.MatchesNothing, false, index, siblings);
        return siblings;
    }

    private void Note(IndentProblemKind kind, bool isBlock, int index, int column) =>
        trial.Problems.Add(new IndentProblem(kind, isBlock, index, column, open[^1].Column, [.. open.Skip(1).Select(node => node.Line)], [.. open.Select(node => node.ChildColumn)]));

    private void CloseDownTo(int last)
    {
        while (open.Count > last + 1)
        {
            var done = open[^1];
            open.RemoveAt(open.Count - 1);
            open[^1].Children.Add(new NodeSyntax(done.Line, done.Fact!, done.Children.ToImmutable()));
        }
    }

    /// <summary>Nothing stands under a value, nor under the name of another declaration.</summary>
    private static bool IsNoBlock(FactSyntax fact) => !CanBeBlock(fact) || (fact.Arguments.Length > 0 && Kinds.IsKind(fact.Keyword.Text));

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
