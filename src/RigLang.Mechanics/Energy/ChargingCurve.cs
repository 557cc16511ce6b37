using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>What the battery takes at a state of charge.</summary>
/// <param name="Charge">0 to 1.</param>
/// <param name="Power">W, zero or above.</param>
public readonly record struct ChargePoint(double Charge, double Power);

/// <summary>
/// Charging power over the state of charge, in straight pieces, level before the first and after the last point. Time is integrated exactly: a level piece
/// takes
/// E Δs/P, a slope takes (E/β) ln(P_a/P_b) with β the power lost per unit of charge.
/// </summary>
public sealed class ChargingCurve
{
    private readonly PiecewiseLinear? _power;

    private ChargingCurve(PiecewiseLinear? power) => _power = power;

    /// <summary>
    /// A curve through points. If one is impossible (charge outside 0 to 1 or not ascending, power below zero or unknown) nothing can be computed with it.
    /// </summary>
    public static ChargingCurve Through(ReadOnlySpan<ChargePoint> points)
    {
        double[] charges = new double[points.Length], powers = new double[points.Length];
        for (int i = 0; i < points.Length; i++)
            (charges[i], powers[i]) = (Within(points[i].Charge, 0, 1), NotNegative(points[i].Power));
        return new ChargingCurve(PiecewiseLinear.IsLine(charges, powers) ? new PiecewiseLinear(charges, powers) : null);
    }

    /// <summary>The same power at every charge, W.</summary>
    public static ChargingCurve Level(double power) => Through([new ChargePoint(0, power)]);

    /// <summary>Whether times can be computed.</summary>
    public bool IsComputable => _power is not null;

    /// <summary>Power at a state of charge, W.</summary>
    public double PowerAt(double charge) => _power?.At(Within(charge, 0, 1)) ?? double.NaN;

    /// <summary>Lowest power between two states of charge, W.</summary>
    public double LeastBetween(double from, double to)
    {
        if (_power is null)
            return double.NaN;
        double least = Math.Min(PowerAt(from), PowerAt(to));
        for (int i = 0; i < _power.X.Length; i++)
        {
            if (_power.X[i] > from && _power.X[i] < to)
                least = Math.Min(least, _power.Y[i]);
        }

        return least;
    }

    /// <summary>The curve where the site gives no more than a power (W, into the battery).</summary>
    public ChargingCurve LimitedTo(double power) => LimitedBy(Level(power));

    /// <summary>The curve where the post gives no more than a current (A), with the battery's voltage (V) rising straight from empty to full.</summary>
    public ChargingCurve LimitedToCurrent(double current, double emptyVoltage, double fullVoltage) =>
        LimitedBy(Through([new(0, Positive(current) * Positive(emptyVoltage)), new(1, current * Positive(fullVoltage))]));

    /// <summary>The lower of two curves.</summary>
    public ChargingCurve LimitedBy(ChargingCurve other) => new(_power is null || other._power is null ? null : PiecewiseLinear.Lower(_power, other._power));

    /// <summary>The curve with all powers multiplied, as for a cold battery (0.3 to 0.7 below 10 °C, value from memory).</summary>
    public ChargingCurve Scaled(double factor) => new(
        _power is null || double.IsNaN(Within(factor, 0, 10)) ? null : new PiecewiseLinear(_power.X.ToArray(), [.. _power.Y.ToArray().Select(power => power * factor)]));

    /// <summary>Time to charge, s. NaN if the power runs out before the goal; 0 if there is nothing to charge.</summary>
    /// <param name="capacity">Energy between empty and full, J, above zero.</param>
    /// <param name="from">State of charge, 0 to 1.</param>
    /// <param name="to">State of charge, 0 to 1.</param>
    public double Time(double capacity, double from, double to)
    {
        double start = Within(from, 0, 1), goal = Within(to, 0, 1);
        if (_power is null || double.IsNaN(Positive(capacity) + start + goal))
            return double.NaN;
        double time = 0;
        foreach ((double low, double high) in Pieces(start, goal))
            time += PieceTime(capacity, low, high);
        return Finite(time);
    }

    /// <summary>State of charge after charging for a time, at most 1.</summary>
    /// <param name="capacity">J, above zero.</param>
    /// <param name="from">State of charge, 0 to 1.</param>
    /// <param name="time">s, zero or above.</param>
    public double ChargedAfter(double capacity, double from, double time)
    {
        double start = Within(from, 0, 1);
        if (_power is null || double.IsNaN(Positive(capacity) + start + NotNegative(time)))
            return double.NaN;
        double left = time, charge = start;
        foreach ((double low, double high) in Pieces(start, 1))
        {
            double needed = PieceTime(capacity, low, high);
            if (!(needed <= left))
                return Math.Clamp(AfterInPiece(capacity, low, high, left), low, high);
            left -= needed;
            charge = high;
        }

        return charge;
    }

    private IEnumerable<(double Low, double High)> Pieces(double from, double to)
    {
        double low = from;
        for (int i = 0; i < _power!.X.Length && low < to; i++)
        {
            double x = _power.X[i];
            if (x <= low)
                continue;
            yield return (low, Math.Min(x, to));
            low = x;
        }

        if (low < to)
            yield return (low, to);
    }

    private double PieceTime(double capacity, double low, double high)
    {
        double first = _power!.At(low), last = _power.At(high), change = (first - last) / (first + last);
        // Near a level piece the logarithm loses its digits; its series is exact there to 1e-12.
        double logarithm = Math.Abs(change) < 1e-4 ? 2 * (1 + (change * change / 3)) / (first + last) : Math.Log(first / last) / (first - last);
        return capacity * (high - low) * logarithm;
    }

    /// <summary>Charge after a time within one piece.</summary>
    private double AfterInPiece(double capacity, double low, double high, double time)
    {
        double first = _power!.At(low), slope = (_power.At(high) - first) / (high - low), exponent = slope * time / capacity;
        double growth = Math.Abs(exponent) < 1e-9 ? time / capacity : (Math.Exp(exponent) - 1) / slope;
        return low + (first * growth);
    }
}
