using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Rolling resistance over load as a polynomial in speed (m/s): <c>Constant + Linear v + Square v²</c>.</summary>
/// <param name="Constant">–</param>
/// <param name="Linear">s/m.</param>
/// <param name="Square">s²/m².</param>
public readonly record struct Rolling(double Constant, double Linear = 0, double Square = 0)
{
    /// <summary>Air-filled tyres on a dry road, from their pressure. Source: engineeringtoolbox.com, rolling friction and rolling resistance, eq. 3.</summary>
    /// <param name="pressure">Gauge pressure, Pa, above zero.</param>
    public static Rolling FromPressure(double pressure)
    {
        double perBar = 1e5 / Positive(pressure);
        return new Rolling(Finite(0.005 + (0.01 * perBar)), 0, Finite(0.0095 * perBar * 3.6 * 3.6 / 1e4));
    }

    /// <summary>Radial truck tyres on smooth concrete (SAE, after Gillespie 1992, value from memory).</summary>
    public static Rolling RadialTruck { get; } = new(0.0041, 0.000041 * 3600 / 1609.344);

    /// <summary>Gravel, rolled. Source: engineeringtoolbox.com, rolling friction and rolling resistance.</summary>
    public static Rolling Gravel { get; } = new(0.02);

    /// <summary>Coefficient at a speed, –.</summary>
    /// <param name="speed">m/s.</param>
    public double At(double speed) => Finite(Constant + (speed * (Linear + (Square * speed))));

    /// <summary>The common coefficient of two units, weighted by the loads that roll on them.</summary>
    public static Rolling Mean(Rolling one, double oneLoad, Rolling other, double otherLoad)
    {
        double share = NotNegative(oneLoad) / Positive(oneLoad + NotNegative(otherLoad));
        return new Rolling(
            (share * one.Constant) + ((1 - share) * other.Constant),
            (share * one.Linear) + ((1 - share) * other.Linear),
            (share * one.Square) + ((1 - share) * other.Square));
    }
}
