using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Still air at one place.</summary>
/// <param name="Temperature">K.</param>
/// <param name="Pressure">Pa.</param>
/// <param name="Density">kg/m³.</param>
public readonly record struct AirState(double Temperature, double Pressure, double Density);

/// <summary>
/// The standard atmosphere of ISO 2533 up to 11 km. It is defined over <em>geopotential</em> altitude; a map's altitude is geometric and
/// 0.03 % larger at 2000 m, which moves pressure in the fourth digit. The two have separate functions.
/// </summary>
public static class Atmosphere
{
    private const double SeaLevelTemperature = 288.15, LapseRate = 0.0065, SeaLevelPressure = 101_325, Exponent = 5.255880, GasConstant = 287.05287, EarthRadius = 6_356_766;

    /// <summary>State at a geopotential altitude, m, from −5000 to 11 000.</summary>
    public static AirState AtGeopotential(double altitude)
    {
        double temperature = SeaLevelTemperature - (LapseRate * Within(altitude, -5000, 11_000));
        double pressure = SeaLevelPressure * Math.Pow(temperature / SeaLevelTemperature, Exponent);
        return new AirState(temperature, pressure, pressure / (GasConstant * temperature));
    }

    /// <summary>State at a geometric altitude, m, as on maps.</summary>
    public static AirState AtGeometric(double altitude) => AtGeopotential(Geopotential(altitude));

    /// <summary>Geopotential altitude of a geometric one, m.</summary>
    public static double Geopotential(double altitude) => Finite(EarthRadius * altitude / Positive(EarthRadius + altitude));
}
