using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Unknowns fitted to readings.</summary>
/// <param name="Values">One for each unknown; NaN where the readings cannot tell it from the others.</param>
/// <param name="Errors">Standard deviation of each, from the readings' own standard deviations.</param>
/// <param name="Covariance">Row by row, unknowns squared.</param>
/// <param name="Residuals">Reading less fit, one for each reading.</param>
/// <param name="Condition">Largest over smallest singular value of the scaled problem: how nearly two unknowns look the same.</param>
/// <param name="Spread">Root of the weighted residual sum over the readings in excess: about 1 if the readings are as good as stated; NaN without
/// excess.</param>
public sealed record FitResult(
    IReadOnlyList<double> Values, IReadOnlyList<double> Errors, IReadOnlyList<double> Covariance, IReadOnlyList<double> Residuals, double Condition, double Spread)
{
    /// <summary>Whether every unknown was found.</summary>
    public bool IsDetermined => Values.Count > 0 && !Values.Any(double.IsNaN);
}

/// <summary>
/// Linear least squares by singular values, each reading weighted by its standard deviation. What the readings cannot tell is refused unknown by unknown: an
/// unknown is found only if no combination that leaves all readings as they are contains it.
/// </summary>
public static class LeastSquares
{
    /// <param name="design">Readings × unknowns, row by row.</param>
    /// <param name="readings">The readings; at least one.</param>
    /// <param name="deviations">Their standard deviations, above zero.</param>
    /// <param name="unknowns">Number of unknowns.</param>
    /// <param name="worstCondition">Singular values smaller than the largest over this count as nothing.</param>
    public static FitResult Fit(ReadOnlySpan<double> design, ReadOnlySpan<double> readings, ReadOnlySpan<double> deviations, int unknowns, double worstCondition = 1e8)
    {
        int count = readings.Length;
        if (count == 0 || unknowns < 1 || design.Length != count * unknowns || deviations.Length != count)
            return Refused(unknowns, count);
        Matrix<double> matrix = Matrix<double>.Build.Dense(count, unknowns);
        Vector<double> right = Vector<double>.Build.Dense(count);
        double[] scale = new double[unknowns];
        for (int row = 0; row < count; row++)
        {
            right[row] = Finite(readings[row] / Positive(deviations[row]));
            for (int column = 0; column < unknowns; column++)
            {
                matrix[row, column] = Finite(design[(row * unknowns) + column] / deviations[row]);
                scale[column] += matrix[row, column] * matrix[row, column];
            }
        }

        if (right.Any(double.IsNaN) || scale.Any(one => !double.IsFinite(one)))
            return Refused(unknowns, count);
        for (int column = 0; column < unknowns; column++)
        {
            scale[column] = scale[column] > 0 ? Math.Sqrt(scale[column]) : 1;
            matrix.SetColumn(column, matrix.Column(column) / scale[column]);
        }

        try
        {
            return Solve(matrix, right, scale, deviations, worstCondition);
        }
        catch (NonConvergenceException)
        {
            return Refused(unknowns, count);
        }
    }

    private static FitResult Solve(Matrix<double> matrix, Vector<double> right, double[] scale, ReadOnlySpan<double> deviations, double worstCondition)
    {
        int unknowns = scale.Length, count = right.Count;
        var svd = matrix.Svd();
        double largest = svd.S[0], smallest = svd.S.Count < unknowns ? 0 : svd.S[^1];
        var values = Vector<double>.Build.Dense(unknowns);
        double[] covariance = new double[unknowns * unknowns], hidden = new double[unknowns];
        int rank = 0;
        for (int k = 0; k < unknowns; k++)
        {
            Vector<double> direction = svd.VT.Row(k);
            if (k >= svd.S.Count || !(svd.S[k] > largest / worstCondition))
            {
                for (int i = 0; i < unknowns; i++)
                    hidden[i] += direction[i] * direction[i];
                continue;
            }

            rank++;
            values += direction * (svd.U.Column(k).DotProduct(right) / svd.S[k]);
            for (int i = 0; i < unknowns * unknowns; i++)
                covariance[i] += direction[i / unknowns] * direction[i % unknowns] / (svd.S[k] * svd.S[k]);
        }

        Vector<double> rest = right - (matrix * values);
        double[] result = new double[unknowns], errors = new double[unknowns], residuals = new double[count];
        for (int i = 0; i < count; i++)
            residuals[i] = rest[i] * deviations[i];
        for (int i = 0; i < unknowns * unknowns; i++)
            covariance[i] = hidden[i / unknowns] + hidden[i % unknowns] > 1e-9 ? double.NaN : covariance[i] / (scale[i / unknowns] * scale[i % unknowns]);
        for (int i = 0; i < unknowns; i++)
        {
            result[i] = hidden[i] > 1e-9 ? double.NaN : Finite(values[i] / scale[i]);
            errors[i] = Math.Sqrt(covariance[(i * unknowns) + i]);
        }

        double spread = count > rank ? Math.Sqrt(rest.DotProduct(rest) / (count - rank)) : double.NaN;
        return new FitResult(result, errors, covariance, residuals, Finite(largest / smallest), spread);
    }

    private static FitResult Refused(int unknowns, int count)
    {
        static double[] Nothing(int length)
        {
            double[] nothing = new double[Math.Max(0, length)];
            Array.Fill(nothing, double.NaN);
            return nothing;
        }

        unknowns = Math.Clamp(unknowns, 0, 100);
        return new FitResult(Nothing(unknowns), Nothing(unknowns), Nothing(unknowns * unknowns), Nothing(count), double.NaN, double.NaN);
    }
}
