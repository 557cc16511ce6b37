using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// Efficiency of an engine over the share of its rated power that it gives (crank work over fuel energy). Typical engines, values from memory: best petrol
/// 225 to 260
/// and diesel 195 to 220 g/kWh, part load worse, full load enriched.
/// </summary>
public sealed class EngineMap
{
    private static readonly double[] Shares = [0.005, 0.015, 0.04, 0.06, 0.10, 0.14, 0.20, 0.40, 0.60, 0.80, 1.0];

    private readonly PiecewiseLinear _efficiency;

    private EngineMap(double[] efficiencies)
    {
        _efficiency = new PiecewiseLinear(Shares, efficiencies);
        Best = efficiencies.Max();
    }

    public static EngineMap Petrol { get; } = new([0.12, 0.16, 0.22, 0.28, 0.33, 0.35, 0.36, 0.35, 0.34, 0.32, 0.30]);

    /// <summary>Petrol engine with late intake closing, as in hybrids.</summary>
    public static EngineMap Atkinson { get; } = new([0.12, 0.28, 0.35, 0.375, 0.39, 0.40, 0.40, 0.38, 0.37, 0.36, 0.35]);

    public static EngineMap Diesel { get; } = new([0.14, 0.20, 0.26, 0.32, 0.39, 0.41, 0.42, 0.41, 0.38, 0.36, 0.34]);

    /// <summary>Efficiency at the best point.</summary>
    public double Best { get; }

    /// <summary>Efficiency at a share of the rated power, 0 to 1; NaN above, where the engine cannot go.</summary>
    public double Efficiency(double share) => _efficiency.At(Domain.Within(share, 0, 1));

    /// <summary>
    /// Fuel power, W, for a crank power. Below half a per cent of the rated power the fuel of idling is burnt; on the overrun (power below zero) none.
    /// </summary>
    /// <param name="crankPower">W.</param>
    /// <param name="ratedPower">W, above zero.</param>
    /// <param name="scale">Multiplies the efficiency; from a stated consumption or best point.</param>
    public double FuelPower(double crankPower, double ratedPower, double scale = 1)
    {
        if (crankPower < 0)
            return 0;
        double power = Math.Max(crankPower, Shares[0] * Positive(ratedPower));
        return Finite(power / (Efficiency(power / ratedPower) * Positive(scale)));
    }
}
