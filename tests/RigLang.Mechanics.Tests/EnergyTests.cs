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

    /// <summary>An independent reckoning: a tenth of a second at a time, what the curve takes and no more.</summary>
    [Property(MaxTest = 20)]
    public void A_battery_takes_what_its_charge_lets_it(int charge, int wanted, int last)
    {
        const double capacity = 60 * KilowattHour, time = 600, share = 0.6;
        double from = Between(charge, 0.4, 1), power = Between(wanted, 5e3, 120e3), end = Between(last, 1e3, 40e3);
        var curve = ChargingCurve.Through([new(0, 100e3), new(0.5, 90e3), new(1, end)]);
        LegEnergy before = (Drive with { Regeneration = share, Auxiliary = 500 }).FromWork(0, power / share * time, 9000, time);
        (LegEnergy energy, double after) = new ChargeLimit(curve, capacity).Over(before, share, from);
        double state = from;
        for (int i = 0; i < time * 10; i++)
            state = Math.Min(1, state + (Math.Min(power - 500, curve.PowerAt(state)) * 0.1 / capacity));
        after.Should().BeApproximately(state, 2e-5);
        (-energy.Battery).Should().BeApproximately((after - from) * capacity, 1);
        // Whatever the battery refuses is heat in the brakes; nothing is lost or won.
        energy.Braking.Should().BeApproximately(energy.Brakes + (energy.Recovered / share), 1e-3);
        energy.Battery.Should().BeApproximately(energy.Auxiliary - energy.Recovered, 1e-3);
        (energy.Recovered + energy.Refused).Should().BeApproximately(before.Recovered, 1e-3);
    }

    [Property(MaxTest = 30)]
    public void A_limit_by_charge_is_the_same_for_a_stretch_cut_in_two(int charge, int cut)
    {
        const double capacity = 40 * KilowattHour;
        double from = Between(charge, 0.3, 0.99), part = Between(cut, 0.05, 0.95);
        var limit = new ChargeLimit(ChargingCurve.Through([new(0, 90e3), new(0.6, 60e3), new(1, 8e3)]), capacity);
        var down = new RouteSegment(9000, -0.08, 20, 1.1);
        (LegEnergy whole, double end) = limit.Over(Drive.Over(Rig, down), 0.65, from);
        (LegEnergy first, double middle) = limit.Over(Drive.Over(Rig, down with { Length = 9000 * part }), 0.65, from);
        (LegEnergy second, double last) = limit.Over(Drive.Over(Rig, down with { Length = 9000 * (1 - part) }), 0.65, middle);
        last.Should().BeApproximately(end, 1e-9);
        (first + second).Brakes.Should().BeApproximately(whole.Brakes, 1);
    }

    [Fact]
    public void A_full_battery_takes_nothing_and_an_empty_one_all()
    {
        var limit = new ChargeLimit(ChargingCurve.Level(1e9), 40 * KilowattHour);
        LegEnergy wanted = Drive.FromWork(0, 5 * KilowattHour, 5000, 300);
        limit.Over(wanted, 0.65, 0.2).Energy.Should().Be(wanted);
        limit.Over(wanted, 0.65, 1).Energy.Battery.Should().BeApproximately(0, 1e-6, "heating and cooling still run on what comes in");
        limit.Over(wanted, 0.65, 1).Charge.Should().Be(1);
    }

    [Property]
    public void An_overrun_trailer_takes_before_regeneration_and_nothing_is_lost(int grade, int mass)
    {
        double share = Between(mass, 0, 0.6), g = Between(grade, 0.0, 0.15);
        var overrun = new OverrunTrailer(OverrunBrake.ByRegulation, share, 0.5);
        var down = new RouteSegment(4000, -g, 20, 1.1);
        LegEnergy energy = Drive.Over(Rig, down, overrun);
        DescentEnergy descent = DescentEnergy.Of(Rig, down, energy.Recovered / (0.65 * down.Time), 0, overrun);
        energy.Braking.Should().BeApproximately(energy.Brakes + (energy.Recovered / 0.65), 1e-3);
        descent.ToHold.Should().BeApproximately(energy.Braking, 1e-3);
        descent.Overrun.Should().BeApproximately(energy.Overrun, 1e-3);
        (descent.Overrun + descent.Regenerated + descent.Retarded + descent.Brakes).Should().BeApproximately(descent.ToHold, 1e-3);
        // By hand: seven eighths of what the trailer pushes beyond 3 % of its weight.
        double weight = share * 4900 * Constants.Gravity, push = share * energy.Braking / 4000;
        energy.Overrun.Should().BeApproximately(4000 * 7 / 8.0 * Math.Max(0, push - (0.03 * weight)), 1);
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

    [Theory]
    [InlineData(20, 1)]
    [InlineData(10, 1)]
    [InlineData(5, 0.75)]
    [InlineData(0, 0.5)]
    [InlineData(-20, 0.5)]
    public void A_cold_battery_takes_less(double celsius, double share) => BatteryDefaults.ColdCharging(celsius + 273.15, 0.5).Should().BeApproximately(share, 1e-12);

    [Property]
    public void What_cold_takes_grows_with_the_cold_and_with_what_is_said_of_it(int celsius, int loss)
    {
        double t = Between(celsius, -45, 24) + 273.15, l = Between(loss, 0, 0.4);
        BatteryDefaults.TemperatureShare(t, l).Should().BeLessThanOrEqualTo(BatteryDefaults.TemperatureShare(t + 1, l));
        BatteryDefaults.TemperatureShare(t, l + 0.1).Should().BeLessThanOrEqualTo(BatteryDefaults.TemperatureShare(t, l));
        BatteryDefaults.TemperatureShare(t, 0).Should().Be(1);
    }

    [Fact]
    public void Hills_are_counted_from_foot_to_top()
    {
        ElevationProfile.Hills([1, 2, 2, 3, 1, 1, 4, 0]).Should().Be(2, "a level place on the way up ends no hill");
        ElevationProfile.Hills([5, 4, 4, 3]).Should().Be(0);
        ElevationProfile.Hills([]).Should().Be(0);
        ElevationProfile.Hills([double.NaN, double.NaN]).Should().Be(0);
    }
}
