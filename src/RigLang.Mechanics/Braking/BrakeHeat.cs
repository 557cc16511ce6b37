using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>How warm brakes get. Temperatures in K; heat capacity of iron 460 to 500, of steel 490 J/(kg·K).</summary>
public static class BrakeHeat
{
    /// <summary>Heat capacity of cast iron, J/(kg·K), middle of 460 to 500.</summary>
    public const double CastIron = 480;

    /// <summary>Temperature of brakes in ordinary use before a descent, K: 150 °F (after the US Grade Severity Rating System, value from memory).</summary>
    public const double Working = 338.7;

    /// <summary>How much faster brakes of light vehicles cool than heavy ones: a wheel's 6 kg have twice the surface for their mass that a truck's 50 kg have (our choice).</summary>
    private const double LightBrakes = 2;

    /// <summary>
    /// Share of their warmth that a light rig's brakes lose in a second to the air at a speed (m/s), 1/s: twice the 1.23 + 0.0256 V an hour, V in mi/h, of heavy
    /// drums in the US Grade Severity Rating System (values from memory).
    /// </summary>
    public static double CoolingRate(double speed) => Finite(LightBrakes * (1.23 + (0.0256 * NotNegative(speed) * 3600 / 1609.344)) / 3600);

    /// <summary>Rise of temperature if all heat stays in the brakes, K: the upper bound.</summary>
    /// <param name="energy">Into the brakes, J.</param>
    /// <param name="brakeMass">Of discs and drums together, kg, above zero.</param>
    /// <param name="heatCapacity">J/(kg·K), above zero.</param>
    public static double Rise(double energy, double brakeMass, double heatCapacity = CastIron) => Finite(NotNegative(energy) / (Positive(brakeMass) * Positive(heatCapacity)));

    /// <summary>Temperature after braking at a steady power, cooled in proportion to the difference from the air, K.</summary>
    /// <param name="start">Temperature at the beginning.</param>
    /// <param name="air">Temperature of the air.</param>
    /// <param name="power">Into the brakes, W.</param>
    /// <param name="cooling">Heat given to the air per kelvin, W/K, zero or above.</param>
    /// <param name="brakeMass">kg, above zero.</param>
    /// <param name="time">s, zero or above.</param>
    /// <param name="heatCapacity">J/(kg·K), above zero.</param>
    public static double Temperature(double start, double air, double power, double cooling, double brakeMass, double time, double heatCapacity = CastIron)
    {
        double capacity = Positive(brakeMass) * Positive(heatCapacity), span = NotNegative(time);
        if (NotNegative(cooling) * span / capacity < 1e-9)
            return Finite(start + (power * span / capacity));
        double settled = air + (power / cooling);
        return Finite(settled + ((start - settled) * Math.Exp(-cooling * span / capacity)));
    }
}
