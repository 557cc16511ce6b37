namespace RigLang.Analysis.Solving;

/// <summary>A few linear equations, by elimination with the largest pivot.</summary>
internal static class LinearSystem
{
    private const double Singular = 1e-12;

    /// <summary>Null where they don't determine the unknowns.</summary>
    /// <param name="rows">As many as unknowns; changed.</param>
    /// <param name="right">One for each row; changed.</param>
    public static double[]? Solve(double[][] rows, double[] right)
    {
        var count = right.Length;
        var largest = rows.Max(row => row.Max(Math.Abs));
        for (var column = 0; column < count; column++)
        {
            var pivot = Enumerable.Range(column, count - column).MaxBy(row => Math.Abs(rows[row][column]));
            if (!(Math.Abs(rows[pivot][column]) > Singular * largest))
            {
                return null;
            }

            (rows[column], rows[pivot], right[column], right[pivot]) = (rows[pivot], rows[column], right[pivot], right[column]);
            for (var row = column + 1; row < count; row++)
            {
                var factor = rows[row][column] / rows[column][column];
                for (var index = column; index < count; index++)
                {
                    rows[row][index] -= factor * rows[column][index];
                }

                right[row] -= factor * right[column];
            }
        }

        var values = new double[count];
        for (var row = count - 1; row >= 0; row--)
        {
            values[row] = (right[row] - Enumerable.Range(row + 1, count - row - 1).Sum(index => rows[row][index] * values[index])) / rows[row][row];
        }

        return values;
    }
}
