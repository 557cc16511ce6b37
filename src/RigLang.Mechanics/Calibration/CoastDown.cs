using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// A vehicle that rolls out on a level road: effective mass · dv/dt = −(F0 + F2 v²). Closed forms, with w = √(F0/F2): v(t) = w tan(φ − κt), φ = atan(v0/w), κ
/// = √(F0 F2)/mass.
/// </summary>
/// <param name="EffectiveMass">Mass with turning parts, kg, above zero.</param>
/// <param name="Constant">F0, N, zero or above.</param>
/// <param name="Square">F2, N/(m/s)², above zero.</param>
public readonly record struct CoastDown(double EffectiveMass, double Constant, double Square)
{
    /// <summary>Time from one speed down to another, s.</summary>
    /// <param name="from">m/s.</param>
    /// <param name="to">m/s, at most <paramref name="from"/>, zero or above (above zero if <see cref="Constant"/> is zero).</param>
    public double Time(double from, double to)
    {
        double mass = Positive(EffectiveMass), constant = NotNegative(Constant), square = Positive(Square);
        double low = NotNegative(to), high = low + NotNegative(from - to);
        if (constant == 0)
            return Finite(mass / square * ((1 / low) - (1 / high)));
        double w = Math.Sqrt(constant / square);
        return Finite(mass / Math.Sqrt(constant * square) * (Math.Atan(high / w) - Math.Atan(low / w)));
    }

    /// <summary>Speed after a time, m/s; 0 once it stands.</summary>
    public double SpeedAfter(double from, double time)
    {
        double mass = Positive(EffectiveMass), constant = NotNegative(Constant), square = Positive(Square), start = NotNegative(from), span = NotNegative(time);
        if (constant == 0)
            return Finite(start / (1 + (square * start * span / mass)));
        double w = Math.Sqrt(constant / square), angle = Math.Atan(start / w) - (Math.Sqrt(constant * square) / mass * span);
        return Finite(w * Math.Tan(Math.Max(0, angle)));
    }

    /// <summary>Distance from a speed to rest, m.</summary>
    public double DistanceToRest(double from) =>
        Finite(Positive(EffectiveMass) / (2 * Positive(Square)) * Math.Log(1 + (Square * NotNegative(from) * from / Positive(Constant))));
}
