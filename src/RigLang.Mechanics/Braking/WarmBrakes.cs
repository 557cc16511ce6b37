using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Brakes of a vehicle or a trailer on their way: how warm they are, stretch after stretch.</summary>
/// <param name="Mass">Discs and drums together, kg, above zero.</param>
/// <param name="Temperature">K.</param>
/// <param name="Hottest">So far, K.</param>
public readonly record struct WarmBrakes(double Mass, double Temperature, double Hottest)
{
    /// <summary>Brakes that begin at a temperature, K.</summary>
    public static WarmBrakes Starting(double mass, double temperature) => new(Positive(mass), Finite(temperature), Finite(temperature));

    /// <summary>After a stretch at a steady power, cooled by the air that passes.</summary>
    /// <param name="energy">Into the brakes, J, zero or above.</param>
    /// <param name="time">s, zero or above.</param>
    /// <param name="speed">m/s.</param>
    /// <param name="air">K.</param>
    public WarmBrakes After(double energy, double time, double speed, double air)
    {
        if (time == 0 && energy == 0)
            return this;
        double cooling = BrakeHeat.CoolingRate(speed) * Mass * BrakeHeat.CastIron;
        double then = BrakeHeat.Temperature(Temperature, air, NotNegative(energy) / Positive(time), cooling, Mass, time);
        return this with { Temperature = then, Hottest = Math.Max(Hottest, then) };
    }
}
