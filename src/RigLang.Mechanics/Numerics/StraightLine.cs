using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>The straight line nearest to points by least squares: <c>y = Intercept + Slope x</c>.</summary>
/// <param name="Intercept">y at x = 0.</param>
/// <param name="Slope">y per x.</param>
/// <param name="LowX">Least x of the points.</param>
/// <param name="HighX">Largest x of the points.</param>
public readonly record struct StraightLine(double Intercept, double Slope, double LowX, double HighX)
{
    /// <summary>Members are NaN for fewer than two points, for points all at one x, or for an unknown number.</summary>
    public static StraightLine Fit(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length < 2 || x.Length != y.Length)
            return new StraightLine(double.NaN, double.NaN, double.NaN, double.NaN);
        double meanX = 0, meanY = 0, low = x[0], high = x[0];
        for (int i = 0; i < x.Length; i++)
        {
            meanX += x[i] / x.Length;
            meanY += y[i] / x.Length;
            low = Math.Min(low, x[i]);
            high = Math.Max(high, x[i]);
        }

        double products = 0, squares = 0;
        for (int i = 0; i < x.Length; i++)
        {
            products += (x[i] - meanX) * (y[i] - meanY);
            squares += (x[i] - meanX) * (x[i] - meanX);
        }

        double slope = high > low ? Finite(products / squares) : double.NaN;
        return new StraightLine(Finite(meanY - (slope * meanX)), slope, low, high);
    }

    /// <summary>y at a place.</summary>
    public double At(double x) => Finite(Intercept + (Slope * x));

    /// <summary>The place of a value; NaN for a level line.</summary>
    public double Place(double y) => Finite((y - Intercept) / Slope);

    /// <summary>Whether a place lies outside the points, so that the line is only guessing there.</summary>
    public bool IsExtrapolated(double x) => !(x >= LowX && x <= HighX);
}
