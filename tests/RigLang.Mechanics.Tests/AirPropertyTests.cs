using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

public sealed class AirPropertyTests
{
    private const double Zero = 273.15;

    [Property]
    public void Higher_is_colder_thinner_and_of_less_pressure(int altitude, int rise)
    {
        double low = Between(altitude, -400, 5000), high = low + Between(rise, 1, 1000);
        AirState below = Atmosphere.AtGeometric(low), above = Atmosphere.AtGeometric(high);
        above.Temperature.Should().BeLessThan(below.Temperature);
        above.Pressure.Should().BeLessThan(below.Pressure);
        above.Density.Should().BeLessThan(below.Density);
    }

    [Property]
    public void Pressure_changes_with_height_as_the_weight_of_the_air_between(int altitude)
    {
        // Hydrostatics: dp = −ρ g dH, over geopotential metres.
        double middle = Between(altitude, -1000, 10_000);
        double slope = (Atmosphere.AtGeopotential(middle + 1).Pressure - Atmosphere.AtGeopotential(middle - 1).Pressure) / 2;
        slope.Should().BeApproximately(-Atmosphere.AtGeopotential(middle).Density * Constants.Gravity, 1e-5 * Math.Abs(slope));
    }

    [Property]
    public void Geopotential_and_geometric_altitude_part_with_the_square_of_the_height(int altitude)
    {
        double z = Between(altitude, 100, 9000);
        (z - Atmosphere.Geopotential(z)).Should().BeApproximately(z * z / 6_356_766, 2e-3 * z * z / 6_356_766);
    }

    [Property]
    public void Humid_air_is_lighter_and_dry_air_is_an_ideal_gas(int celsius, int humidity, int pressure)
    {
        double temperature = Between(celsius, -30, 45) + Zero, p = Between(pressure, 60_000, 105_000), dry = MoistAir.Density(p, temperature, 0);
        MoistAir.Density(p, temperature, Between(humidity, 0.01, 1)).Should().BeLessThan(dry);
        dry.Should().BeApproximately(p / (287.058 * temperature), 1e-9);
    }

    [Property]
    public void Each_per_cent_of_humidity_takes_as_much(int celsius, int humidity)
    {
        double temperature = Between(celsius, 0, 40) + Zero, share = Between(humidity, 0, 1);
        double dry = MoistAir.Density(101325, temperature, 0), full = MoistAir.Density(101325, temperature, 1);
        MoistAir.Density(101325, temperature, share).Should().BeApproximately(dry + (share * (full - dry)), 1e-12);
    }

    [Property]
    public void A_wind_seen_from_the_other_way_is_turned_round(int speed, int from, int course)
    {
        double w = Between(speed, 0, 25), angle = Between(from, 0, 2 * Math.PI), way = Between(course, 0, 2 * Math.PI);
        Wind there = Wind.OnCourse(w, angle, way), back = Wind.OnCourse(w, angle, way + Math.PI);
        back.Head.Should().BeApproximately(-there.Head, 1e-9);
        back.Side.Should().BeApproximately(-there.Side, 1e-9);
        Math.Sqrt((there.Head * there.Head) + (there.Side * there.Side)).Should().BeApproximately(w, 1e-9, "its strength is the same from everywhere");
        Wind.OnCourse(w, angle + 0.7, way + 0.7).Head.Should().BeApproximately(there.Head, 1e-9, "only the angle between them counts");
    }

    [Property]
    public void Air_speed_lies_between_the_difference_and_the_sum(int vehicle, int wind, int angle)
    {
        double v = Between(vehicle, 0, 40), w = Between(wind, 0, 25);
        Wind.OnCourse(w, Between(angle, 0, 2 * Math.PI), 0).AirSpeed(v).Should().BeInRange(Math.Abs(v - w) - 1e-9, v + w + 1e-9);
    }

    [Fact]
    public void Nothing_is_said_of_air_outside_the_domain()
    {
        Atmosphere.AtGeopotential(12_000).Density.Should().Be(double.NaN);
        MoistAir.Density(101325, 400, 0.5).Should().Be(double.NaN);
        MoistAir.Density(101325, 293, 1.5).Should().Be(double.NaN);
        MoistAir.Density(-1, 293, 0.5).Should().Be(double.NaN);
    }
}
