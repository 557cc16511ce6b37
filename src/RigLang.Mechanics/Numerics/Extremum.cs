using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Where a function is least, and how much it is there; both NaN if it could not be computed anywhere.</summary>
/// <param name="Place">The place.</param>
/// <param name="Value">The value.</param>
public readonly record struct LeastResult(double Place, double Value);

/// <summary>The least value of a function between two bounds: the best of an even scan, closed in on by Brent's method (parabolas, with golden sections to fall back on).</summary>
public static class Extremum
{
    /// <summary>What a golden section leaves of the larger part.</summary>
    private static readonly double Golden = (3 - Math.Sqrt(5)) / 2;

    /// <summary>A smooth function can't tell places apart that are nearer than the root of its last digit.</summary>
    private const double Alike = 1e-8;

    /// <param name="function">Where it is NaN it is passed over.</param>
    /// <param name="low">Lower bound, finite.</param>
    /// <param name="high">Upper bound, above the lower.</param>
    /// <param name="steps">Even steps of the scan, 2 to 100 000.</param>
    public static LeastResult Least(Func<double, double> function, double low, double high, int steps = 64)
    {
        if (!double.IsFinite(low) || !double.IsFinite(high) || !(low < high))
            return new LeastResult(double.NaN, double.NaN);
        steps = Math.Clamp(steps, 2, 100_000);
        double At(int i) => i == steps ? high : low + ((high - low) * i / steps);
        int best = -1;
        double value = double.NaN;
        for (int i = 0; i <= steps; i++)
        {
            double candidate = Finite(function(At(i)));
            if (candidate < value || (best < 0 && !double.IsNaN(candidate)))
                (best, value) = (i, candidate);
        }

        return best < 0 ? new LeastResult(double.NaN, double.NaN) : CloseIn(function, At(Math.Max(0, best - 1)), At(best), At(Math.Min(steps, best + 1)), value);
    }

    /// <summary>The least between two places of which it is known that a third one between them, or one of them, is below both.</summary>
    /// <param name="function">Where it is NaN it is passed over.</param>
    /// <param name="low">Lower place.</param>
    /// <param name="middle">The lowest place known, from the lower to the upper one.</param>
    /// <param name="high">Upper place.</param>
    /// <param name="value">The function at the middle.</param>
    public static LeastResult CloseIn(Func<double, double> function, double low, double middle, double high, double value)
    {
        double At(double x) => function(x) is var y && double.IsNaN(y) ? double.PositiveInfinity : y;
        // The lowest place, the second and the third lowest, and the last two steps.
        double x = middle > low && middle < high ? middle : low + (Golden * (high - low)), fx = x == middle ? value : At(x);
        double w = x, fw = fx, v = x, fv = fx, step = high - low, last = step, least = (1e-10 * (high - low)) + 1e-300;
        for (int i = 0; i < 100; i++)
        {
            double centre = (low + high) / 2, tolerance = (Alike * Math.Abs(x)) + least;
            if (Math.Abs(x - centre) <= (2 * tolerance) - ((high - low) / 2))
                break;
            double next = Parabola(x, fx, w, fw, v, fv);
            if (Math.Abs(next) < Math.Abs(last) / 2 && x + next > low && x + next < high)
            {
                (last, step) = (step, next);
                // Not onto an end, which is known already.
                if (x + step - low < 2 * tolerance || high - x - step < 2 * tolerance)
                    step = Math.CopySign(tolerance, centre - x);
            }
            else
            {
                last = x < centre ? high - x : low - x;
                step = Golden * last;
            }

            double u = x + (Math.Abs(step) >= tolerance ? step : Math.CopySign(tolerance, step)), fu = At(u);
            if (fu <= fx)
            {
                (low, high) = u < x ? (low, x) : (x, high);
                (v, fv, w, fw, x, fx) = (w, fw, x, fx, u, fu);
                continue;
            }

            (low, high) = u < x ? (u, high) : (low, u);
            if (fu <= fw || w == x)
                (v, fv, w, fw) = (w, fw, u, fu);
            else if (fu <= fv || v == x || v == w)
                (v, fv) = (u, fu);
        }

        return fx < value ? new LeastResult(x, fx) : new LeastResult(middle, value);
    }

    /// <summary>From the first place to where the parabola through three places turns; NaN where there is none.</summary>
    private static double Parabola(double x, double fx, double w, double fw, double v, double fv)
    {
        double r = (x - w) * (fx - fv), q = (x - v) * (fx - fw), p = ((x - v) * q) - ((x - w) * r), twice = 2 * (q - r);
        return twice == 0 ? double.NaN : -p / twice;
    }
}
