using System.Collections.Immutable;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Reading;

internal enum IndentProblemKind
{
    /// <summary>Goes back to a column in which nothing above stands.</summary>
    MatchesNothing,

    /// <summary>Under a fact of a block.</summary>
    TooDeep,

    /// <summary>Under a fact that can't open a block, or the head of a block inside another. The floor above knows them all and reports them.</summary>
    OutOfPlace,
}

/// <summary>A line that doesn't fit.</summary>
/// <param name="Kind">In what way.</param>
/// <param name="OpensBlock">It counts double then, since its lines are out of place with it.</param>
/// <param name="Line">Counted from the declaration's first.</param>
/// <param name="Column">Where it is read instead, for the kinds that are reported here.</param>
/// <param name="ParentColumn">Of what it was read under.</param>
/// <param name="Above">The lines that it was under, and before that the one it follows.</param>
/// <param name="ChildColumns">Where the lines under each of those stand; below 0 where there are none.</param>
internal sealed record IndentProblem(IndentProblemKind Kind, bool OpensBlock, int Line, int Column, int ParentColumn, ImmutableArray<int> Above, ImmutableArray<int> ChildColumns);

/// <summary>A declaration's indents, some of them set otherwise than written, and what doesn't fit when they are read so.</summary>
internal sealed class IndentTrial(ImmutableArray<int> columns, ImmutableArray<int> moved)
{
    /// <summary>Of each line; -1 where no fact stands.</summary>
    public ImmutableArray<int> Columns { get; } = columns;

    /// <summary>The lines whose indent is not the written one, those in the first column left out, which are reported anyway.</summary>
    public ImmutableArray<int> Moved { get; } = moved;

    public List<IndentProblem> Problems { get; } = [];

    public bool HasFactInFirstColumn => Columns.Contains(0);

    /// <summary>How many findings there would be, about.</summary>
    public int Cost => Moved.Length + Problems.Sum(static problem => problem.OpensBlock ? 2 : 1);

    public static IndentTrial Of(ImmutableArray<LineSyntax> lines) => new([.. lines.Select(static line => line.Statement is FactSyntax ? line.IndentColumns : -1)], []);

    public IndentTrial With(int line, int column) => new(Columns.SetItem(line, column), Moved.Contains(line) ? Moved : Moved.Add(line));

    /// <summary>With the facts of the first column at an indent.</summary>
    public IndentTrial WithFirstColumnAt(int column) => new([.. Columns.Select(own => own == 0 ? column : own)], Moved);

    /// <summary>The fact before or behind a line, or -1.</summary>
    public int Neighbour(int line, int step)
    {
        do
        {
            line += step;
        }
        while (line >= 0 && line < Columns.Length && Columns[line] < 0);
        return line < Columns.Length ? line : -1;
    }

    public IEnumerable<(int Line, LineFinding Finding)> Findings(ImmutableArray<LineSyntax> lines) =>
        Moved.Where(line => lines[line].IndentColumns > 0).Select(line => (line, IndentMatchesNothing.OfMoved(lines[line], Columns[line])))
            .Concat(Problems.Where(static problem => problem.Kind == IndentProblemKind.MatchesNothing)
                .Select(problem => (problem.Line, IndentMatchesNothing.Of(lines[problem.Line], problem.Column, problem.ParentColumn))))
            .Concat(Problems.Where(static problem => problem.Kind == IndentProblemKind.TooDeep)
                .Select(problem => (problem.Line, NestedTooDeep.Of(lines[problem.Line], problem.Column))))
            .OrderBy(static found => found.Item1);
}
