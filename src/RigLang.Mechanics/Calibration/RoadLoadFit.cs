using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A logged drive beside the model of the same drive.</summary>
/// <param name="Model">What the model takes for a rolling coefficient and a drag area (m²), in the unit of <paramref name="Used"/>.</param>
/// <param name="Used">What was used: J out of a battery, m³ out of a tank.</param>
/// <param name="Error">Standard deviation of the difference, above zero, in the same unit.</param>
public sealed record LoggedDrive(Func<double, double, double> Model, double Used, double Error);

/// <summary>Rolling coefficient and drag area known together from elsewhere, as from a coast-down.</summary>
/// <param name="Rolling">Coefficient.</param>
/// <param name="DragArea">m².</param>
/// <param name="RollingVariance">Squared standard deviation, above zero.</param>
/// <param name="DragAreaVariance">The same, m⁴, above zero.</param>
/// <param name="Covariance">Of the two, m².</param>
public readonly record struct RoadLoadReading(double Rolling, double DragArea, double RollingVariance, double DragAreaVariance, double Covariance);

/// <summary>
/// Rolling coefficient and drag area from any model of a drive: hills with regeneration, sections with speeds of their own, engines. Weighted least squares,
/// the model taken as straight about the last answer and tried again until that stays; where nothing is held back, the answer of <see cref="RunFit.Of"/>.
/// </summary>
public static class RoadLoadFit
{
    private const int MostRounds = 30;

    /// <param name="drives">Logged drives; those too much alike to tell rolling from air are refused, as by <see cref="RunFit.Of"/>.</param>
    /// <param name="readings">Coast-downs, each used with the doubt that its two numbers share.</param>
    /// <param name="rolling">Where to begin, above zero.</param>
    /// <param name="dragArea">Where to begin, m², above zero.</param>
    /// <returns>The residuals of the fit are of the drives, in their unit; then two for each reading, in standard deviations.</returns>
    public static RunFit Of(IReadOnlyList<LoggedDrive> drives, IReadOnlyList<RoadLoadReading> readings, double rolling, double dragArea)
    {
        double[] p = [Positive(rolling), Positive(dragArea)];
        int count = drives.Count + (2 * readings.Count);
        double[] design = new double[2 * count], gaps = new double[count], deviations = new double[count];
        FitResult fit = LeastSquares.Fit([], [], [], 2);
        for (int round = 0; round < MostRounds && count > 0; round++)
        {
            for (int i = 0; i < drives.Count; i++)
            {
                LoggedDrive drive = drives[i];
                deviations[i] = Positive(drive.Error);
                gaps[i] = drive.Used - drive.Model(p[0], p[1]);
                for (int k = 0; k < 2; k++)
                    design[(2 * i) + k] = Slope(drive.Model, p, k);
            }

            for (int i = 0; i < readings.Count; i++)
                Whiten(readings[i], p, drives.Count + (2 * i), design, gaps, deviations);
            fit = LeastSquares.Fit(design, gaps, deviations, 2, RunFit.WorstCondition);
            if (!fit.IsDetermined)
                break;
            double largest = 0;
            for (int k = 0; k < 2; k++)
            {
                // Never past half of the way to zero: rolling and air hold back, they don't push.
                double move = Math.Max(fit.Values[k], -0.5 * p[k]);
                p[k] += move;
                largest = Math.Max(largest, Math.Abs(move / p[k]));
            }

            if (largest < 1e-9)
                return new RunFit(Finite(p[0]), Finite(p[1]), fit.Errors[0], fit.Errors[1], fit);
        }

        // Not settled is not found: a fit that runs against zero has no answer in the domain.
        return new RunFit(double.NaN, double.NaN, double.NaN, double.NaN, fit);
    }

    private static double Slope(Func<double, double, double> model, double[] p, int k)
    {
        double step = 1e-4 * p[k], low = k == 0 ? model(p[0] - step, p[1]) : model(p[0], p[1] - step), high = k == 0 ? model(p[0] + step, p[1]) : model(p[0], p[1] + step);
        return (high - low) / (2 * step);
    }

    /// <summary>Two readings of no common doubt in place of two with one: the inverse of the covariance's triangular root.</summary>
    private static void Whiten(RoadLoadReading reading, double[] p, int row, double[] design, double[] gaps, double[] deviations)
    {
        double first = Math.Sqrt(Positive(reading.RollingVariance)), shared = Finite(reading.Covariance) / first;
        double rest = Math.Sqrt(Positive(reading.DragAreaVariance - (shared * shared)));
        double rolling = Finite(reading.Rolling - p[0]) / first, drag = (Finite(reading.DragArea - p[1]) - (shared * rolling)) / rest;
        (design[2 * row], design[(2 * row) + 1], gaps[row], deviations[row]) = (1 / first, 0, rolling, 1);
        (design[(2 * row) + 2], design[(2 * row) + 3], gaps[row + 1], deviations[row + 1]) = (-shared / (first * rest), 1 / rest, drag, 1);
    }
}
