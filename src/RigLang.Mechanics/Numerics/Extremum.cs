using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Where a function is least, and how much it is there; both NaN if it could not be computed anywhere.</summary>
/// <param name="Place">The place.</param>
/// <param name="Value">The value.</param>
public readonly record struct LeastResult(double Place, double Value);

/// <summary>The least value of a function between two bounds: the best of an even scan, closed in on by golden sections.</summary>
public static class Extremum
{
    private static readonly double Golden = (Math.Sqrt(5) - 1) / 2;

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

        return best < 0 ? new LeastResult(double.NaN, double.NaN) : CloseIn(function, At(Math.Max(0, best - 1)), At(Math.Min(steps, best + 1)), At(best), value);
    }

    private static LeastResult CloseIn(Func<double, double> function, double a, double b, double place, double value)
    {
        double left = b - (Golden * (b - a)), right = a + (Golden * (b - a));
        double leftValue = function(left), rightValue = function(right);
        for (int i = 0; i < 60 && b - a > 1e-12 * (Math.Abs(a) + Math.Abs(b)); i++)
        {
            if (leftValue < rightValue)
            {
                (b, right, rightValue) = (right, left, leftValue);
                left = b - (Golden * (b - a));
                leftValue = function(left);
            }
            else
            {
                (a, left, leftValue) = (left, right, rightValue);
                right = a + (Golden * (b - a));
                rightValue = function(right);
            }
        }

        double middle = (a + b) / 2, middleValue = function(middle);
        return middleValue < value ? new LeastResult(middle, middleValue) : new LeastResult(place, value);
    }
}
