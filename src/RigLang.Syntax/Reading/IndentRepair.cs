namespace RigLang.Syntax.Reading;

/// <summary>
/// Finds the line whose indent is the slip where many lines don't fit because of it: a first fact indented by two makes every further one look
/// as if it stood under it. Of all single lines near the first misfit it takes the one that leaves least to report, and again until nothing gets better.
/// </summary>
internal static class IndentRepair
{
    /// <summary>More wrong indents than these are no slips, and nobody can say which lines are right.</summary>
    private const int MostMoved = 4;

    private const int MostTrials = 200;

    /// <summary>So that an endless declaration of nothing but wrong indents is read in reasonable time.</summary>
    private const int MostLines = 20_000;

    /// <param name="trial">As written, laid.</param>
    /// <param name="lay">Reads the lines by a trial and takes down what doesn't fit.</param>
    public static IndentTrial Best(IndentTrial trial, Action<IndentTrial> lay)
    {
        var asWritten = FirstColumn(trial, lay);
        var best = asWritten;
        var most = Math.Min(MostTrials, MostLines / trial.Columns.Length);
        for (int next = 0, trials = 0; next < best.Problems.Count && trials < most && best.Moved.Length < MostMoved;)
        {
            var better = best;
            foreach (var candidate in Candidates(best, best.Problems[next]))
            {
                lay(candidate.Trial);
                trials++;
                if (candidate.Trial.Cost < better.Cost || (candidate.IsFlanked && candidate.Trial.Cost == best.Cost && better == best))
                {
                    better = candidate.Trial;
                }
            }

            next = better == best ? next + 1 : 0;
            best = better;
        }

        return 2 * best.Cost <= asWritten.Cost + 1 ? best : asWritten;
    }

    /// <summary>Facts in the first column are facts of the declaration, unless the lines below fit only under them.</summary>
    private static IndentTrial FirstColumn(IndentTrial trial, Action<IndentTrial> lay)
    {
        var usual = trial.Columns.Where(static column => column > 0).DefaultIfEmpty(0).Min();
        if (!trial.HasFactInFirstColumn || usual == 0)
        {
            return trial;
        }

        var indented = trial.WithFirstColumnAt(usual);
        lay(indented);
        return indented.Cost < trial.Cost ? indented : trial;
    }

    /// <summary>The misfit itself, what it follows and what it is under, each in any column that its neighbours have.</summary>
    private static IEnumerable<(IndentTrial Trial, bool IsFlanked)> Candidates(IndentTrial trial, IndentProblem problem)
    {
        int[] neighbours = [trial.Neighbour(problem.Line, -1), trial.Neighbour(problem.Line, 1)];
        var columns = problem.ChildColumns.Concat(neighbours.Where(static line => line >= 0).Select(line => trial.Columns[line])).Append(trial.Columns[problem.Line]);
        foreach (var line in problem.Above.Append(neighbours[0]).Append(problem.Line).Where(static line => line >= 0).Distinct())
        {
            foreach (var column in columns.Where(column => column > 0 && column != trial.Columns[line]).Distinct())
            {
                var (before, behind) = (trial.Neighbour(line, -1), trial.Neighbour(line, 1));
                var isFlanked = line < problem.Line && before >= 0 && behind >= 0 && trial.Columns[before] == column && trial.Columns[behind] == column;
                yield return (trial.With(line, column), isFlanked);
            }
        }
    }
}
