using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>How a search ended.</summary>
public enum SearchOutcome
{
    /// <summary>The function gave NaN where it was asked, or the bounds make no interval.</summary>
    NotComputable,

    /// <summary>No place in the interval.</summary>
    None,

    /// <summary>One place.</summary>
    One,

    /// <summary>Several places; all that were seen are listed.</summary>
    Several,
}

/// <summary>Where a function takes a wanted value.</summary>
/// <param name="Outcome">How the search ended.</param>
/// <param name="Places">All places found, ascending.</param>
public sealed record SearchResult(SearchOutcome Outcome, IReadOnlyList<double> Places)
{
    /// <summary>The lowest place; NaN if there is none.</summary>
    public double First => Places.Count > 0 ? Places[0] : double.NaN;

    internal static SearchResult NotComputable { get; } = new(SearchOutcome.NotComputable, []);
}

/// <summary>
/// Roots of a function between two bounds. The interval is scanned in even steps for changes of sign, and each is closed in on by Brent's method
/// (inverse quadratic steps, with halving to fall back on). Two roots within one step can be missed; a jump over zero is not taken for a root.
/// </summary>
public static class Root
{
    /// <summary>All places where <paramref name="function"/> takes <paramref name="value"/>.</summary>
    /// <param name="function">Finite on the interval; where it is NaN no root is sought.</param>
    /// <param name="low">Lower bound, finite.</param>
    /// <param name="high">Upper bound, above the lower.</param>
    /// <param name="value">The wanted value.</param>
    /// <param name="steps">Even steps of the scan, 1 to 100 000.</param>
    public static SearchResult Find(Func<double, double> function, double low, double high, double value = 0, int steps = 64)
    {
        if (!double.IsFinite(low) || !double.IsFinite(high) || !(low < high) || !double.IsFinite(value))
            return SearchResult.NotComputable;
        steps = Math.Clamp(steps, 1, 100_000);
        double Gap(double x) => Finite(function(x) - value);
        var places = new List<double>();
        bool anything = false;
        double before = low, gapBefore = Gap(low);
        if (gapBefore == 0)
            places.Add(low);
        for (int i = 1; i <= steps; i++)
        {
            double x = i == steps ? high : low + ((high - low) * i / steps), gap = Gap(x);
            anything |= !double.IsNaN(gap) || !double.IsNaN(gapBefore);
            if (gap == 0)
                places.Add(x);
            else if (Math.Sign(NotNaN(gap)) * Math.Sign(NotNaN(gapBefore)) < 0)
                AddRoot(places, Gap, before, gapBefore, x, gap);
            (before, gapBefore) = (x, gap);
        }

        SearchOutcome outcome = places.Count switch { 0 => SearchOutcome.None, 1 => SearchOutcome.One, _ => SearchOutcome.Several };
        return anything ? new SearchResult(outcome, places) : SearchResult.NotComputable;
    }

    private static double NotNaN(double value) => double.IsNaN(value) ? 0 : value;

    private static void AddRoot(List<double> places, Func<double, double> gap, double a, double fa, double b, double fb)
    {
        double larger = Math.Max(Math.Abs(fa), Math.Abs(fb));
        (double root, double residue) = Brent(gap, a, fa, b, fb);
        // At a jump the residue stays as large as it was; at a root it falls to nothing.
        if (Math.Abs(residue) <= 1e-6 * larger)
            places.Add(root);
    }

    /// <summary>Brent's method on a bracket with opposite signs.</summary>
    private static (double Root, double Residue) Brent(Func<double, double> f, double a, double fa, double b, double fb)
    {
        double c = a, fc = fa, step = b - a, last = step;
        for (int i = 0; i < 200; i++)
        {
            if (Math.Sign(fb) == Math.Sign(fc))
            {
                (c, fc) = (a, fa);
                step = last = b - a;
            }

            if (Math.Abs(fc) < Math.Abs(fb))
            {
                (a, b, c) = (b, c, b);
                (fa, fb, fc) = (fb, fc, fb);
            }

            double tolerance = (4 * double.BitIncrement(Math.Abs(b))) - (4 * Math.Abs(b)) + 1e-15, half = (c - b) / 2;
            if (fb == 0 || Math.Abs(half) <= tolerance)
                break;
            (step, last) = Step(a, fa, b, fb, c, fc, half, tolerance, step, last);
            (a, fa) = (b, fb);
            b += Math.Abs(step) > tolerance ? step : Math.CopySign(tolerance, half);
            fb = f(b);
            if (double.IsNaN(fb))
                return (double.NaN, double.NaN);
        }

        return (b, fb);
    }

    private static (double Step, double Last) Step(
        double a, double fa, double b, double fb, double c, double fc, double half, double tolerance, double step, double last)
    {
        if (Math.Abs(last) < tolerance || Math.Abs(fa) <= Math.Abs(fb))
            return (half, half);
        double s = fb / fa, p, q;
        if (a == c)
        {
            (p, q) = (2 * half * s, 1 - s);
        }
        else
        {
            double r = fa / fc, t = fb / fc;
            p = s * ((2 * half * r * (r - t)) - ((b - a) * (t - 1)));
            q = (r - 1) * (t - 1) * (s - 1);
        }

        if (p > 0)
            q = -q;
        p = Math.Abs(p);
        bool accepts = 2 * p < Math.Min((3 * half * q) - Math.Abs(tolerance * q), Math.Abs(last * q));
        return accepts ? (p / q, step) : (half, half);
    }
}
