namespace RigLang.Quantities;

/// <summary>Comparison against a limit with a small relative tolerance: 1587.5732950000001 kg is not over 1587.573295 kg.
/// What is not a number neither exceeds nor falls below anything.</summary>
public static class Limits
{
    /// <summary>Far above rounding in a chain of conversions, far below the last digit that anybody writes.</summary>
    public const double RelativeTolerance = 1e-9;

    public static bool Exceeds(double value, double limit) => value > limit && !Same(value, limit);

    public static bool FallsBelow(double value, double limit) => value < limit && !Same(value, limit);

    public static bool Same(double a, double b) =>
        a == b || (double.IsFinite(a) && double.IsFinite(b) && Math.Abs(a - b) <= RelativeTolerance * Math.Max(Math.Abs(a), Math.Abs(b)));
}
