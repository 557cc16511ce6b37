using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class AirChecks
{
    private const string Psychrometrics = "psychrolib (ASHRAE formulation), values of its functions";
    private const string Units = "GNU units 2.22, stdatm functions";
    private const string Us1976 = "US Standard Atmosphere 1976, PDAS table as quoted in the tests of the fluids library";
    private const double Zero = 273.15;

    public static IEnumerable<PublishedCheck> All =>
    [
        // Pressure to the digits of the two independent programs.
        .. Standards(), Pressure(0, 101325), Pressure(500, 95460.812), Pressure(1000, 89874.519), Pressure(1500, 84555.932), Pressure(2000, 79495.124), Pressure(3000, 70108.422),
        Temperature(0, 15), Temperature(1000, 8.5), Temperature(2000, 2), Temperature(3000, -4.5),
        new("standard atmosphere", Units, Read, "geopotential altitude 2000 m", "temperature, K", 275.15, 0.005, () => Atmosphere.AtGeopotential(2000).Temperature),
        new("standard atmosphere", Units, Read, "geopotential altitude 2000 m", "pressure, Pa", 79495.199, 0.1, () => Atmosphere.AtGeopotential(2000).Pressure),
        new("standard atmosphere", Units, Read, "geometric altitude 2000 m", "temperature, K", 275.15409, 0.0001, () => Atmosphere.AtGeometric(2000).Temperature),
        new("standard atmosphere", Units, Read, "geometric altitude 2000 m", "pressure, Pa", 79501.408, 0.1, () => Atmosphere.AtGeometric(2000).Pressure),
        .. Table(-2000, 301.15, 127780, 1.4782), .. Table(0, 288.15, 101320, 1.2250), .. Table(2000, 275.15, 79501, 1.0066),
        .. Table(4000, 262.17, 61660, 0.81935), .. Table(6000, 249.19, 47218, 0.66011),
        Density(20, 0.5, 101325, 1.198898), Density(30, 0.8, 101325, 1.149673), Density(35, 1, 101325, 1.121483), Density(0, 0.5, 101325, 1.290846),
        Density(25, 0.5, 83525, 0.968969), Density(-10, 0.7, 90000, 1.190588),
        Saturation(15, 1705.448), Saturation(20, 2338.804), Saturation(30, 4246.030), Saturation(35, 5627.819),
        new("wind over the road", "40 CFR 1037.528, worked example", Read, "wind 7.1 mi/h, 47.0° off the course, vehicle 64.9 mi/h", "air speed, mi/h", 69.93, 0.01,
            () => Wind.OnCourse(7.1, 47 * Math.PI / 180, 0).AirSpeed(64.9)),
        new("wind over the road", "40 CFR 1037.528, worked example", Read, "wind 7.1 mi/h, 47.0° off the course, vehicle 64.9 mi/h", "yaw, °", 4.26, 0.006,
            () => Wind.OnCourse(7.1, 47 * Math.PI / 180, 0).Yaw(64.9) * 180 / Math.PI),
    ];

    // Density at the two altitudes follows from the table's own pressure and temperature.
    private static IEnumerable<PublishedCheck> Standards()
    {
        const string table = "ISO 2533 and ICAO Doc 7488, table by geopotential altitude";
        foreach (var (altitude, temperature, pressure, density) in new[] { (0.0, 288.15, 101325.0, 1.22500), (1000, 281.65, 89874.6, 1.11164), (2000, 275.15, 79495.2, 1.00649) })
        {
            string inputs = $"geopotential altitude {altitude} m";
            yield return new("standard atmosphere", table, Read, inputs, "temperature, K", temperature, 0.005, () => Atmosphere.AtGeopotential(altitude).Temperature);
            yield return new("standard atmosphere", table, Read, inputs, "pressure, Pa", pressure, 0.15, () => Atmosphere.AtGeopotential(altitude).Pressure);
            yield return new("standard atmosphere", table, Read, inputs, "density, kg/m³", density, 0.000006, () => Atmosphere.AtGeopotential(altitude).Density);
        }
    }

    private static PublishedCheck Pressure(double altitude, double pressure) => new("standard atmosphere", Psychrometrics, Read,
        $"altitude {altitude} m taken as geopotential", "pressure, Pa", pressure, 2e-6 * pressure, () => Atmosphere.AtGeopotential(altitude).Pressure);

    private static PublishedCheck Temperature(double altitude, double celsius) => new("standard atmosphere", Psychrometrics, Read,
        $"altitude {altitude} m", "temperature, °C", celsius, 0.05, () => Atmosphere.AtGeopotential(altitude).Temperature - Zero);

    private static IEnumerable<PublishedCheck> Table(double altitude, double temperature, double pressure, double density)
    {
        string inputs = $"geometric altitude {altitude} m";
        yield return new("standard atmosphere", Us1976, Read, inputs, "temperature, K", temperature, 5e-5 * temperature, () => Atmosphere.AtGeometric(altitude).Temperature);
        yield return new("standard atmosphere", Us1976, Read, inputs, "pressure, Pa", pressure, 5e-5 * pressure, () => Atmosphere.AtGeometric(altitude).Pressure);
        yield return new("standard atmosphere", Us1976, Read, inputs, "density, kg/m³", density, 5e-5 * density, () => Atmosphere.AtGeometric(altitude).Density);
    }

    private static PublishedCheck Density(double celsius, double humidity, double pressure, double density) => new("moist air", Psychrometrics, Read,
        $"{celsius} °C, {humidity * 100} % humid, {pressure} Pa", "density, kg/m³", density, 2e-4 * density, () => MoistAir.Density(pressure, celsius + Zero, humidity));

    private static PublishedCheck Saturation(double celsius, double pressure) => new("moist air", Psychrometrics, Read,
        $"{celsius} °C", "saturation pressure, Pa", pressure, 6e-4 * pressure, () => MoistAir.SaturationPressure(celsius + Zero));
}
