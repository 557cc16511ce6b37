using RigLang.Mechanics;

namespace RigLang.Published.Outside;

/// <summary>Our air against the atmospheres of three other programs, over the whole range where there are roads.</summary>
public sealed class AirTests
{
    private const double Zero = 273.15;

    private static readonly double[] Altitudes = [.. Enumerable.Range(-4, 61).Select(step => step * 100.0)];

    [Asks(nameof(OutsideProgram.Fluids))]
    public void The_standard_atmosphere_by_geometric_altitude()
    {
        IReadOnlyList<double> theirs = OutsideProgram.Fluids.Numbers(
            $$"""
            from fluids.atmosphere import ATMOSPHERE_1976
            for z in [{{string.Join(", ", Altitudes)}}]:
                a = ATMOSPHERE_1976(z)
                print(repr(float(a.T)), repr(float(a.P)), repr(float(a.rho)))
            """);

        for (int i = 0; i < Altitudes.Length; i++)
        {
            AirState ours = Atmosphere.AtGeometric(Altitudes[i]);
            // It takes the Earth for 6356.766 km too, and a gas constant of 1976 that is 1e-6 off ours.
            ours.Temperature.Should().BeApproximately(theirs[3 * i], 1e-4, "at {0} m", Altitudes[i]);
            ours.Pressure.Should().BeApproximately(theirs[(3 * i) + 1], 5e-6 * ours.Pressure, "at {0} m", Altitudes[i]);
            ours.Density.Should().BeApproximately(theirs[(3 * i) + 2], 1e-5 * ours.Density, "at {0} m", Altitudes[i]);
        }
    }

    [Asks(nameof(OutsideProgram.Units))]
    public void The_standard_atmosphere_by_geopotential_altitude()
    {
        IReadOnlyList<double> theirs = OutsideProgram.Units.Numbers(
            string.Concat(Altitudes.Select(altitude => FormattableString.Invariant($"stdatmTH({altitude} m)\nK\nstdatmPH({altitude} m)\nPa\n"))));

        for (int i = 0; i < Altitudes.Length; i++)
        {
            AirState ours = Atmosphere.AtGeopotential(Altitudes[i]);
            ours.Temperature.Should().BeApproximately(theirs[2 * i], 1e-6, "at {0} m", Altitudes[i]);
            ours.Pressure.Should().BeApproximately(theirs[(2 * i) + 1], 5e-6 * ours.Pressure, "at {0} m", Altitudes[i]);
        }
    }

    [Asks(nameof(OutsideProgram.Psychrolib))]
    public void Humid_air_from_frost_to_heat_at_sea_level_and_on_a_pass()
    {
        double[] temperatures = [-20, -10, 0, 5, 10, 15, 20, 25, 30, 35, 40, 45], humidities = [0, 0.3, 0.6, 1], pressures = [101325, 85000, 70000];
        (double Temperature, double Humidity, double Pressure)[] grid =
            [.. from temperature in temperatures from humidity in humidities from pressure in pressures select (temperature, humidity, pressure)];
        IReadOnlyList<double> theirs = OutsideProgram.Psychrolib.Numbers(
            $$"""
            const p = require('psychrolib');
            p.SetUnitSystem(p.SI);
            for (const [t, h, q] of [{{string.Join(", ", grid.Select(point => FormattableString.Invariant($"[{point.Temperature}, {point.Humidity}, {point.Pressure}]")))}}])
                console.log(p.GetMoistAirDensity(t, p.GetHumRatioFromRelHum(t, h, q), q));
            """);

        for (int i = 0; i < grid.Length; i++)
        {
            double ours = MoistAir.Density(grid[i].Pressure, grid[i].Temperature + Zero, grid[i].Humidity);
            // The two vapour formulas differ by 6e-4 at most where there is much vapour, which is a small part of the air.
            ours.Should().BeApproximately(theirs[i], 2e-4 * ours, "{0}", grid[i]);
        }
    }

    [Asks(nameof(OutsideProgram.Psychrolib))]
    public void Saturation_and_the_pressure_of_an_altitude()
    {
        double[] temperatures = [0.5, 5, 10, 15, 20, 25, 30, 35, 40, 45];
        IReadOnlyList<double> theirs = OutsideProgram.Psychrolib.Numbers(
            FormattableString.Invariant($$"""
            const p = require('psychrolib');
            p.SetUnitSystem(p.SI);
            for (const t of [{{string.Join(", ", temperatures.Select(one => FormattableString.Invariant($"{one}")))}}])
                console.log(p.GetSatVapPres(t));
            for (const z of [{{string.Join(", ", Altitudes)}}])
                console.log(p.GetStandardAtmPressure(z));
            """));

        for (int i = 0; i < temperatures.Length; i++)
            MoistAir.SaturationPressure(temperatures[i] + Zero).Should().BeApproximately(theirs[i], 7e-4 * theirs[i], "at {0} °C", temperatures[i]);
        for (int i = 0; i < Altitudes.Length; i++)
            Atmosphere.AtGeopotential(Altitudes[i]).Pressure.Should().BeApproximately(theirs[temperatures.Length + i], 3e-6 * 101325, "at {0} m", Altitudes[i]);
    }
}
