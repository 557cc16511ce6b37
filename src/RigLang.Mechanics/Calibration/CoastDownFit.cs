using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// Road load from a coast-down table. First by intervals: −mass Δv/Δt against the mean of v² over the interval, a straight line; then, from there, by the
/// closed-form curve through
/// all points with the starting speed as a third unknown. Two answers that differ show a table that is no coast-down.
/// </summary>
/// <param name="Intervals">By intervals.</param>
/// <param name="Curve">By the curve; this is the better one.</param>
/// <param name="ConstantError">Standard deviation of the curve's F0 from the scatter of the points, N.</param>
/// <param name="SquareError">Of its F2, N/(m/s)².</param>
/// <param name="Correlation">Between those two errors, −1 to 1: a table that is short in speed trades one for the other.</param>
/// <param name="Scatter">Standard deviation of the points about the curve, m/s; NaN for three points whose own error nobody says.</param>
public sealed record CoastDownFit(CoastDown Intervals, CoastDown Curve, double ConstantError, double SquareError, double Correlation, double Scatter)
{
    private static CoastDown Unknown { get; } = new(double.NaN, double.NaN, double.NaN);

    /// <summary>Whether a road load was found.</summary>
    public bool IsDetermined => !double.IsNaN(Curve.Constant + Curve.Square);

    /// <param name="times">s, ascending strictly; at least three.</param>
    /// <param name="speeds">m/s, descending strictly, as many.</param>
    /// <param name="mass">kg, above zero.</param>
    /// <param name="rotatingShare">Inertia of turning parts as a share of the mass.</param>
    /// <param name="grade">Rise over run of the road; its force is taken off.</param>
    /// <param name="speedError">Standard deviation of a reading by its rounding, m/s: the points are trusted no better than that, however well they lie.</param>
    public static CoastDownFit Of(
        ReadOnlySpan<double> times, ReadOnlySpan<double> speeds, double mass, double rotatingShare, double grade = 0, double speedError = 0)
    {
        var refused = new CoastDownFit(Unknown, Unknown, double.NaN, double.NaN, double.NaN, double.NaN);
        double effective = Positive(mass) * (1 + NotNegative(rotatingShare)), weight = mass * Constants.Gravity * Slope.Sine(grade);
        if (times.Length < 3 || times.Length != speeds.Length || double.IsNaN(effective + weight))
            return refused;
        int intervals = times.Length - 1;
        double[] squares = new double[intervals], forces = new double[intervals];
        for (int i = 0; i < intervals; i++)
        {
            double v1 = NotNegative(speeds[i]), v2 = NotNegative(speeds[i + 1]);
            squares[i] = ((v1 * v1) + (v1 * v2) + (v2 * v2)) / 3;
            forces[i] = (effective * Positive(v1 - v2) / Positive(times[i + 1] - times[i])) - weight;
            if (double.IsNaN(squares[i] + forces[i]))
                return refused;
        }

        StraightLine line = StraightLine.Fit(squares, forces);
        var byIntervals = new CoastDown(effective, line.Intercept, line.Slope);
        // Friction and air that push instead of hold are no road load.
        return line.Intercept > 0 && line.Slope > 0 ? ThroughPoints(byIntervals, times, speeds, weight, NotNegative(speedError)) : refused with { Intervals = byIntervals };
    }

    private static CoastDownFit ThroughPoints(CoastDown start, ReadOnlySpan<double> times, ReadOnlySpan<double> speeds, double weight, double speedError)
    {
        double[] p = [speeds[0], start.Constant, start.Square];
        int count = times.Length;
        double[] design = new double[count * 3], gaps = new double[count], deviations = new double[count];
        Array.Fill(deviations, 1);
        FitResult? step = null;
        for (int round = 0; round < 30; round++)
        {
            for (int i = 0; i < count; i++)
            {
                double time = times[i] - times[0];
                double At(double v0, double f0, double f2) => new CoastDown(start.EffectiveMass, f0 + weight, f2).SpeedAfter(v0, time);
                gaps[i] = speeds[i] - At(p[0], p[1], p[2]);
                for (int k = 0; k < 3; k++)
                {
                    double[] up = [.. p], down = [.. p];
                    double change = 1e-5 * p[k];
                    up[k] += change;
                    down[k] -= change;
                    design[(i * 3) + k] = (At(up[0], up[1], up[2]) - At(down[0], down[1], down[2])) / (2 * change);
                }
            }

            step = LeastSquares.Fit(design, gaps, deviations, 3);
            if (!step.IsDetermined)
                return new CoastDownFit(start, Unknown, double.NaN, double.NaN, double.NaN, double.NaN);
            double largest = 0;
            for (int k = 0; k < 3; k++)
            {
                // Never past half of the way to zero, so that forces stay forces.
                double move = Math.Max(step.Values[k], -0.5 * p[k]);
                p[k] += move;
                largest = Math.Max(largest, Math.Abs(move / p[k]));
            }

            if (largest < 1e-10)
                break;
        }

        double scatter = double.IsNaN(step!.Spread) && speedError > 0 ? speedError : Math.Max(step.Spread, speedError);
        double correlation = Finite(step.Covariance[5] / (step.Errors[1] * step.Errors[2]));
        return new CoastDownFit(start, new CoastDown(start.EffectiveMass, p[1], p[2]), step.Errors[1] * scatter, step.Errors[2] * scatter, correlation, scatter);
    }
}
