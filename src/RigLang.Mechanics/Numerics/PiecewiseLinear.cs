namespace RigLang.Mechanics;

/// <summary>A line of straight pieces through points, level beyond the first and the last.</summary>
internal sealed class PiecewiseLinear
{
    private readonly double[] _x, _y;

    /// <param name="x">Ascending strictly.</param>
    /// <param name="y">As many.</param>
    public PiecewiseLinear(double[] x, double[] y) => (_x, _y) = (x, y);

    public ReadOnlySpan<double> X => _x;

    public ReadOnlySpan<double> Y => _y;

    /// <summary>Whether points make such a line: at least one, all finite, x ascending strictly.</summary>
    public static bool IsLine(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length == 0 || x.Length != y.Length)
            return false;
        for (int i = 0; i < x.Length; i++)
        {
            if (!double.IsFinite(x[i]) || !double.IsFinite(y[i]) || (i > 0 && x[i] <= x[i - 1]))
                return false;
        }

        return true;
    }

    public double At(double x)
    {
        if (double.IsNaN(x))
            return double.NaN;
        int after = Array.BinarySearch(_x, x);
        if (after >= 0)
            return _y[after];
        after = ~after;
        if (after == 0)
            return _y[0];
        if (after == _x.Length)
            return _y[^1];
        double share = (x - _x[after - 1]) / (_x[after] - _x[after - 1]);
        return _y[after - 1] + (share * (_y[after] - _y[after - 1]));
    }

    /// <summary>The lower of two lines, with a point added wherever they cross.</summary>
    public static PiecewiseLinear Lower(PiecewiseLinear one, PiecewiseLinear other)
    {
        double[] x = [.. one._x.Union(other._x).Order()];
        var xs = new List<double>(x.Length * 2);
        for (int i = 0; i < x.Length; i++)
        {
            xs.Add(x[i]);
            if (i + 1 == x.Length)
                break;
            double gap = one.At(x[i]) - other.At(x[i]), next = one.At(x[i + 1]) - other.At(x[i + 1]);
            double crossing = x[i] + ((x[i + 1] - x[i]) * gap / (gap - next));
            if (gap * next < 0 && crossing > x[i] && crossing < x[i + 1])
                xs.Add(crossing);
        }

        return new PiecewiseLinear([.. xs], [.. xs.Select(at => Math.Min(one.At(at), other.At(at)))]);
    }
}
