using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values and conservation of energy.</summary>
public sealed class EnergyTests
{
    private const double KilowattHour = 3.6e6;

    private static RoadLoad Rig { get; } = new(4900, new Rolling(0.010), 2.6);

    private static BatteryDrive Drive { get; } = new(0.88, 0.65, double.PositiveInfinity, 1500);

    [Fact]
    public void A_kilometre_on_the_level() =>
        (Drive.Over(Rig, new RouteSegment(1000, 0, 25, 1.2)).Battery / 3600).Should().BeApproximately(476.11, 0.006);

    [Fact]
    public void A_climb_costs_its_height_through_the_drive_and_a_fall_returns_it_through_regeneration()
    {
        double height = 4900 * Constants.Gravity * 500;
        (Drive.FromWork(height, 0, 0, 0).Battery / KilowattHour).Should().BeApproximately(7.584, 0.0006);
        (Drive.FromWork(0, height, 0, 0).Battery / KilowattHour).Should().BeApproximately(-4.338, 0.0006);
    }

    [Fact]
    public void A_battery_that_takes_little_leaves_the_rest_to_the_brakes()
    {
        BatteryDrive limited = Drive with { RegenerationPower = 20_000 };
        var descent = new RouteSegment(8000, -0.08, 20, 1.1);
        LegEnergy energy = limited.Over(Rig, descent);
        energy.Recovered.Should().BeApproximately(20_000 * 400, 1e-6);
        energy.Brakes.Should().BeApproximately(energy.Braking - (energy.Recovered / 0.65), 1e-6);
        energy.Brakes.Should().BePositive();
    }

    [Property]
    public void Work_at_the_wheels_is_what_rolling_air_and_height_take(int grade, int speed, int wind)
    {
        var stretch = new RouteSegment(5000, Between(grade, -0.1, 0.1), Between(speed, 5, 35), 1.15, new Wind(Between(wind, -5, 10), 3));
        LegEnergy energy = Drive.Over(Rig, stretch);
        double losses = (Rig.RollingForce(stretch.Speed, stretch.Grade) + Rig.AirForce(stretch.Speed, stretch.Density, stretch.Wind)) * 5000;
        (energy.Traction - energy.Braking).Should().BeApproximately(losses + (4900 * Constants.Gravity * stretch.Rise), 1e-3);
        energy.Battery.Should().BeApproximately((energy.Traction / 0.88) - energy.Recovered + energy.Auxiliary, 1e-3);
    }

    [Property]
    public void Splitting_a_stretch_changes_nothing(int grade, int share)
    {
        double g = Between(grade, -0.09, 0.09), part = Between(share, 0.05, 0.95);
        BatteryDrive limited = Drive with { RegenerationPower = 30_000 };
        var whole = new RouteSegment(4000, g, 22, 1.2);
        LegEnergy split = limited.Over(Rig, [whole with { Length = 4000 * part }, whole with { Length = 4000 * (1 - part) }]);
        split.Battery.Should().BeApproximately(limited.Over(Rig, whole).Battery, 1e-3);
    }

    [Property]
    public void A_hill_never_gives_back_more_than_it_took(int grade)
    {
        double g = Between(grade, 0, 0.12);
        LegEnergy over = Drive.Over(Rig, [new(2000, g, 20, 1.2), new(2000, -g, 20, 1.2)]);
        over.Battery.Should().BeGreaterThanOrEqualTo(Drive.Over(Rig, new RouteSegment(4000, 0, 20, 1.2)).Battery * (1 - 2 * g * g));
    }

    [Property]
    public void A_split_leg_keeps_distance_and_height(int climb, int descent)
    {
        double up = Between(climb, 0, 3000), down = Between(descent, 0, 3000);
        IReadOnlyList<RouteSegment> parts = RouteSplit.FromTotals(60_000, up, down, 22, 1.2);
        parts.Sum(part => part.Length).Should().BeApproximately(60_000, 1e-6);
        parts.Where(part => part.Grade > 0).Sum(part => part.Rise).Should().BeApproximately(up, 1e-6);
        parts.Where(part => part.Grade < 0).Sum(part => part.Rise).Should().BeApproximately(-down, 1e-6);
    }

    [Fact]
    public void More_climb_than_a_leg_is_long_is_not_computable() =>
        Drive.Over(Rig, RouteSplit.FromTotals(1000, 900, 200, 22, 1.2)).Battery.Should().Be(double.NaN);

    [Fact]
    public void Hills_in_a_short_leg_get_steeper_until_they_fit()
    {
        IReadOnlyList<RouteSegment> parts = RouteSplit.FromTotals(10_000, 400, 400, 22, 1.2);
        parts.Sum(part => part.Length).Should().BeApproximately(10_000, 1e-6);
        parts[0].Grade.Should().BeGreaterThan(0.08);
    }

    [Theory]
    [InlineData(0.20, 0.36)]
    [InlineData(0.12, 0.34)]
    public void The_engine_map_is_straight_between_its_points(double share, double efficiency) =>
        EngineMap.Petrol.Efficiency(share).Should().BeApproximately(efficiency, 1e-12);

    [Fact]
    public void Best_consumption_is_that_of_typical_engines()
    {
        // 43.2 MJ/kg: petrol 231 g/kWh best and 278 at full load, diesel 198 best.
        static double GramsPerKilowattHour(double efficiency) => 3.6e6 / (43.2e3 * efficiency);
        GramsPerKilowattHour(EngineMap.Petrol.Best).Should().BeApproximately(231, 0.6);
        GramsPerKilowattHour(EngineMap.Petrol.Efficiency(1)).Should().BeApproximately(278, 0.6);
        GramsPerKilowattHour(EngineMap.Diesel.Best).Should().BeApproximately(198, 0.6);
    }

    [Property]
    public void More_power_takes_more_fuel(int power)
    {
        double p = Between(power, 0, 99_000);
        foreach (EngineMap map in (EngineMap[])[EngineMap.Petrol, EngineMap.Atkinson, EngineMap.Diesel])
            map.FuelPower(p + 1000, 100_000).Should().BeGreaterThanOrEqualTo(map.FuelPower(p, 100_000));
    }

    [Fact]
    public void An_engine_cannot_give_more_than_its_rated_power() => EngineMap.Petrol.FuelPower(100_001, 100_000).Should().Be(double.NaN);

    [Fact]
    public void A_stated_consumption_scales_the_engine_to_give_it_back()
    {
        var solo = new RoadLoad(1500, new Rolling(0.01), 0.65);
        var pace = new RouteSegment(1, 0, 25, 1.2);
        double stated = 5.2e-3 / 100e3 * Fuel.Petrol.VolumeHeatingValue;
        CombustionDrive drive = new CombustionDrive(EngineMap.Petrol, 80_000, 0.92).ScaleTo(solo, pace, stated);
        (drive.Over(solo, pace with { Length = 100_000 }).Volume(Fuel.Petrol) * 1000).Should().BeApproximately(5.2, 1e-9);
        drive.Scale.Should().BeInRange(0.7, 1.4);
    }

    [Fact]
    public void What_is_not_known_makes_energy_not_computable()
    {
        Drive.Over(Rig with { DragArea = double.NaN }, new RouteSegment(1000, 0, 25, 1.2)).Battery.Should().Be(double.NaN);
        (Drive with { RegenerationPower = double.NaN }).Over(Rig, new RouteSegment(1000, 0, 25, 1.2)).Battery.Should().BePositive("nothing is regenerated on the level");
        (Drive with { RegenerationPower = double.NaN }).Over(Rig, new RouteSegment(1000, -0.1, 25, 1.2)).Battery.Should().Be(double.NaN);
        Drive.Range(1e8, Rig, new RouteSegment(0, -0.1, 25, 1.2)).Should().Be(double.NaN, "a descent that charges has no range");
    }

    [Theory]
    [InlineData(20, 250)]
    [InlineData(-10, 4170)]
    [InlineData(34, 1150)]
    [InlineData(-40, 6000)]
    public void Cabin_power_grows_with_cold_and_heat(double celsius, double watts) =>
        BatteryDefaults.Auxiliary(celsius + 273.15).Should().BeApproximately(watts, 1e-6);
}
