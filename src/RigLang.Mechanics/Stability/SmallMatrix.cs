namespace RigLang.Mechanics;

/// <summary>Small dense matrices in row order.</summary>
internal static class SmallMatrix
{
    /// <summary>Solves <c>matrix · result = right</c> for several columns by elimination with pivoting; all NaN if the matrix is singular.</summary>
    /// <param name="matrix">Square, n × n; overwritten.</param>
    /// <param name="right">n × columns; overwritten.</param>
    /// <param name="result">n × columns.</param>
    /// <param name="columns">Number of right-hand sides.</param>
    public static void Solve(Span<double> matrix, Span<double> right, Span<double> result, int columns)
    {
        int n = right.Length / columns;
        for (int k = 0; k < n; k++)
        {
            int pivot = k;
            for (int row = k + 1; row < n; row++)
            {
                if (Math.Abs(matrix[(row * n) + k]) > Math.Abs(matrix[(pivot * n) + k]))
                    pivot = row;
            }

            if (matrix[(pivot * n) + k] == 0)
            {
                result.Fill(double.NaN);
                return;
            }

            Swap(matrix, n, k, pivot);
            Swap(right, columns, k, pivot);
            for (int row = k + 1; row < n; row++)
            {
                double factor = matrix[(row * n) + k] / matrix[(k * n) + k];
                for (int column = k; column < n; column++)
                    matrix[(row * n) + column] -= factor * matrix[(k * n) + column];
                for (int column = 0; column < columns; column++)
                    right[(row * columns) + column] -= factor * right[(k * columns) + column];
            }
        }

        for (int row = n - 1; row >= 0; row--)
        {
            for (int column = 0; column < columns; column++)
            {
                double sum = right[(row * columns) + column];
                for (int k = row + 1; k < n; k++)
                    sum -= matrix[(row * n) + k] * result[(k * columns) + column];
                result[(row * columns) + column] = sum / matrix[(row * n) + row];
            }
        }
    }

    /// <summary>Characteristic polynomial of a 4 × 4 matrix, λ⁴ + p[0] λ³ + p[1] λ² + p[2] λ + p[3], by the Faddeev–LeVerrier recursion.</summary>
    public static (double P3, double P2, double P1, double P0) CharacteristicPolynomial(ReadOnlySpan<double> matrix)
    {
        Span<double> power = stackalloc double[16], next = stackalloc double[16];
        matrix.CopyTo(power);
        Span<double> coefficients = stackalloc double[4];
        for (int k = 1; k <= 4; k++)
        {
            double trace = power[0] + power[5] + power[10] + power[15], coefficient = -trace / k;
            coefficients[k - 1] = coefficient;
            for (int i = 0; i < 4; i++)
                power[i * 5] += coefficient;
            for (int i = 0; i < 16; i++)
            {
                int row = i / 4 * 4, column = i % 4;
                next[i] = (matrix[row] * power[column]) + (matrix[row + 1] * power[column + 4]) + (matrix[row + 2] * power[column + 8]) + (matrix[row + 3] * power[column + 12]);
            }

            next.CopyTo(power);
        }

        return (coefficients[0], coefficients[1], coefficients[2], coefficients[3]);
    }

    private static void Swap(Span<double> matrix, int width, int one, int other)
    {
        for (int column = 0; one != other && column < width; column++)
            (matrix[(one * width) + column], matrix[(other * width) + column]) = (matrix[(other * width) + column], matrix[(one * width) + column]);
    }
}
