using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values of air and road load; not outside checks.</summary>
public sealed class RoadLoadTests
{
    private static RoadLoad Combination { get; } = new(4900, new Rolling(0.010), 2.60);

    private static RoadLoad Solo { get; } = new(2400, new Rolling(0.010), 0.75);

    [Theory]
    [InlineData(80, 1266.95, 351.93, 462.21)]
    [InlineData(90, 1475.84, 409.96, 522.47)]
    [InlineData(100, 1709.31, 474.81, 589.82)]
    [InlineData(110, 1967.35, 546.49, 664.25)]
    public void Force_on_a_level_road(double kilometresPerHour, double force, double wattHoursPerKilometre, double solo)
    {
        double speed = kilometresPerHour / 3.6;
        Combination.Force(speed, 1.225).Should().BeApproximately(force, 0.006);
        (Combination.Force(speed, 1.225) / 3.6).Should().BeApproximately(wattHoursPerKilometre, 0.006);
        Solo.Force(speed, 1.225).Should().BeApproximately(solo, 0.006);
    }

    [Theory]
    [InlineData(0.03, 2707.7)]
    [InlineData(0.06, 4144.1)]
    [InlineData(0.07, 4621.2)]
    public void Force_on_a_grade(double grade, double force) => Combination.Force(80 / 3.6, 1.225, grade: grade).Should().BeApproximately(force, 0.06);

    [Theory]
    [InlineData(0, 33.3333, 0)]
    [InlineData(45, 31.4495, 10.799)]
    [InlineData(90, 26.3523, 18.435)]
    [InlineData(180, 16.6667, 0)]
    public void Wind_adds_to_the_road_speed_as_a_vector(double from, double airSpeed, double yaw)
    {
        Wind wind = Wind.OnCourse(30 / 3.6, from * Math.PI / 180, 0);
        wind.AirSpeed(25).Should().BeApproximately(airSpeed, 0.00006);
        (wind.Yaw(25) * 180 / Math.PI).Should().BeApproximately(yaw, 0.0006);
    }

    [Theory]
    [InlineData(1000, 281.65, 89874.6, 1.11164)]
    [InlineData(2000, 275.15, 79495.2, 1.00649)]
    [InlineData(2500, 271.90, 74682.5, 0.95686)]
    [InlineData(4000, 262.15, 61640.2, 0.81913)]
    public void The_standard_atmosphere_thins_with_height(double altitude, double temperature, double pressure, double density)
    {
        AirState air = Atmosphere.AtGeopotential(altitude);
        air.Temperature.Should().BeApproximately(temperature, 1e-9);
        air.Pressure.Should().BeApproximately(pressure, 0.06);
        air.Density.Should().BeApproximately(density, 6e-6);
    }

    [Fact]
    public void Saturated_air_is_lighter_than_dry_air() =>
        MoistAir.Density(101_325, 303.15, 1).Should().BeLessThan(MoistAir.Density(101_325, 303.15, 0));

    [Fact]
    public void Dynamometer_coefficients_and_their_road_load_agree_at_every_speed()
    {
        DynamometerRoadLoad bench = DynamometerRoadLoad.FromCustomary(34.26, 0.3191, 0.0142);
        RoadLoad road = bench.ToRoadLoad(2154);
        bench.F0.Should().BeApproximately(152.4, 0.05);
        bench.F1.Should().BeApproximately(3.175, 0.0006);
        bench.F2.Should().BeApproximately(0.3161, 0.00006);
        foreach (double speed in (double[])[0, 10, 25, 40])
            road.Force(speed, DynamometerRoadLoad.ReferenceDensity).Should().BeApproximately(bench.Force(speed), 1e-9);
    }

    [Property]
    public void Air_force_grows_with_headwind_and_falls_with_height(int speed, int wind, int altitude)
    {
        double v = Between(speed, 5, 35), h = Between(altitude, 0, 3000), w = Between(wind, 0, 12);
        double density = Atmosphere.AtGeometric(h).Density;
        Combination.AirForce(v, density, new Wind(w + 1, 0)).Should().BeGreaterThan(Combination.AirForce(v, density, new Wind(w, 0)));
        Combination.AirForce(v, Atmosphere.AtGeometric(h + 100).Density).Should().BeLessThan(Combination.AirForce(v, density));
    }

    [Property]
    public void A_side_wind_is_the_same_from_either_side(int speed, int wind)
    {
        double v = Between(speed, 1, 35), w = Between(wind, 0, 15);
        Combination.Force(v, 1.2, new Wind(2, w)).Should().Be(Combination.Force(v, 1.2, new Wind(2, -w)));
    }

    [Fact]
    public void A_tailwind_faster_than_the_vehicle_pushes_it() => Combination.AirForce(5, 1.2, new Wind(-8, 0)).Should().BeNegative();

    [Fact]
    public void A_grade_is_a_tangent()
    {
        Slope.Sine(1).Should().BeApproximately(Math.Sqrt(0.5), 1e-15);
        Slope.FromRise(6, Math.Sqrt((6 * 6) + (100 * 100))).Should().BeApproximately(0.06, 1e-12);
        Slope.FromRise(100, 50).Should().Be(double.NaN);
    }

    [Theory]
    [InlineData(double.NaN, 1.2)]
    [InlineData(25, double.NaN)]
    [InlineData(25, 0)]
    [InlineData(1e300, 1.2)]
    public void A_force_that_cannot_be_is_not_computable(double speed, double density) => Combination.Force(speed, density).Should().Be(double.NaN);
}
