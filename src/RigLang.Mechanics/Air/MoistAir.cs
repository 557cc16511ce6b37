using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Density of humid air as a mixture of two ideal gases. Water vapour is lighter than air: humid air is thinner than dry air.</summary>
public static class MoistAir
{
    private const double DryGasConstant = 287.058, VapourGasConstant = 461.495;

    /// <summary>Pressure of saturated vapour over water, Pa, by Buck's formula. Valid from −40 to 60 °C, best from 0 °C up.</summary>
    /// <param name="temperature">K.</param>
    public static double SaturationPressure(double temperature)
    {
        double t = Within(temperature - 273.15, -40, 60);
        return 611.21 * Math.Exp((18.678 - (t / 234.5)) * t / (257.14 + t));
    }

    /// <summary>Density, kg/m³.</summary>
    /// <param name="pressure">Air pressure, Pa, above zero.</param>
    /// <param name="temperature">K, −40 to 60 °C.</param>
    /// <param name="relativeHumidity">0 to 1.</param>
    public static double Density(double pressure, double temperature, double relativeHumidity)
    {
        double vapour = Within(relativeHumidity, 0, 1) * SaturationPressure(temperature);
        double dry = Positive(pressure - vapour);
        return Finite((dry / (DryGasConstant * temperature)) + (vapour / (VapourGasConstant * temperature)));
    }

    /// <summary>
    /// Density on a road at a map's altitude (m) with the day's temperature (K): the pressure is that of the standard atmosphere. The weather moves
    /// pressure, and so density, by about ±2 % around it.
    /// </summary>
    public static double DensityAt(double altitude, double temperature, double relativeHumidity) =>
        Density(Atmosphere.AtGeometric(altitude).Pressure, temperature, relativeHumidity);
}
