using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values: 80 kWh, 150 kW to 50 %, then straight down to 30 kW at 100 %.</summary>
public sealed class ChargingTests
{
    private const double Capacity = 80 * 3.6e6;

    private static ChargingCurve Curve { get; } = ChargingCurve.Through([new(0.5, 150e3), new(1, 30e3)]);

    [Theory]
    [InlineData(0.1, 0.5, 12.8000)]
    [InlineData(0.5, 0.8, 13.0785)]
    [InlineData(0.1, 0.8, 25.8785)]
    [InlineData(0.2, 0.8, 22.6785)]
    [InlineData(0.1, 0.9, 33.2330)]
    [InlineData(0.5, 1.0, 32.1888)]
    public void Charging_time(double from, double to, double minutes) => (Curve.Time(Capacity, from, to) / 60).Should().BeApproximately(minutes, 0.00006);

    [Theory]
    [InlineData(75e3, 0.1, 0.8, 44.8000)]
    [InlineData(75e3, 0.5, 0.8, 19.2000)]
    [InlineData(50e3, 0.1, 0.8, 67.2000)]
    public void A_site_may_give_less(double site, double from, double to, double minutes) =>
        (Curve.LimitedTo(site).Time(Capacity, from, to) / 60).Should().BeApproximately(minutes, 0.00006);

    [Property]
    public void Charging_for_the_time_to_a_charge_reaches_it(int from, int to, int site)
    {
        ChargingCurve curve = Curve.LimitedTo(Between(site, 20e3, 200e3));
        double start = Between(from, 0, 0.9), goal = start + Between(to, 0, 1 - start);
        curve.ChargedAfter(Capacity, start, curve.Time(Capacity, start, goal)).Should().BeApproximately(goal, 1e-9);
    }

    [Property]
    public void Two_steps_take_as_long_as_one(int from, int middle, int to)
    {
        double[] charges = [Between(from, 0, 1), Between(middle, 0, 1), Between(to, 0, 1)];
        Array.Sort(charges);
        double whole = Curve.Time(Capacity, charges[0], charges[2]);
        (Curve.Time(Capacity, charges[0], charges[1]) + Curve.Time(Capacity, charges[1], charges[2])).Should().BeApproximately(whole, 1e-6);
    }

    [Property]
    public void A_stronger_site_is_never_slower(int site)
    {
        double power = Between(site, 10e3, 200e3);
        Curve.LimitedTo(power + 5000).Time(Capacity, 0.1, 0.9).Should().BeLessThanOrEqualTo(Curve.LimitedTo(power).Time(Capacity, 0.1, 0.9) + 1e-9);
    }

    [Fact]
    public void A_current_limit_follows_the_voltage_of_the_battery()
    {
        ChargingCurve curve = ChargingCurve.Level(400e3).LimitedToCurrent(200, 320, 400);
        curve.PowerAt(0).Should().BeApproximately(64e3, 1e-6);
        curve.PowerAt(1).Should().BeApproximately(80e3, 1e-6);
        curve.PowerAt(0.5).Should().BeApproximately(72e3, 1e-6);
        // Mean of a straight rise by the logarithm: E/β ln.
        curve.Time(Capacity, 0, 1).Should().BeApproximately(Capacity / 16e3 * Math.Log(80.0 / 64), 1e-6);
    }

    [Fact]
    public void The_exact_time_agrees_with_a_fine_sum()
    {
        ChargingCurve curve = ChargingCurve.Through([new(0.1, 60e3), new(0.35, 140e3), new(0.6, 92e3), new(0.8, 55e3), new(1, 8e3)]).LimitedTo(120e3);
        double sum = 0;
        for (int i = 0; i < 90_000; i++)
            sum += Capacity * 1e-5 / curve.PowerAt(0.05 + ((i + 0.5) * 1e-5));
        curve.Time(Capacity, 0.05, 0.95).Should().BeApproximately(sum, 0.01);
    }

    [Fact]
    public void A_cold_battery_takes_longer() => Curve.Scaled(0.5).Time(Capacity, 0.1, 0.8).Should().BeApproximately(2 * Curve.Time(Capacity, 0.1, 0.8), 1e-6);

    [Fact]
    public void Power_that_runs_out_never_fills_the_battery()
    {
        ChargingCurve empty = ChargingCurve.Through([new(0, 100e3), new(1, 0)]);
        empty.Time(Capacity, 0.2, 1).Should().Be(double.NaN);
        empty.Time(Capacity, 0.2, 0.99).Should().BePositive();
        empty.ChargedAfter(Capacity, 0.2, 1e6).Should().BeInRange(0.999, 1);
        ChargingCurve.Level(0).ChargedAfter(Capacity, 0.2, 100).Should().Be(0.2);
    }

    [Fact]
    public void Impossible_curves_compute_nothing()
    {
        ChargingCurve.Through([]).Time(Capacity, 0.1, 0.8).Should().Be(double.NaN);
        ChargingCurve.Through([new(0.5, 100e3), new(0.5, 80e3)]).IsComputable.Should().BeFalse();
        ChargingCurve.Through([new(0.5, -1)]).IsComputable.Should().BeFalse();
        ChargingCurve.Through([new(9.5, 100e3)]).IsComputable.Should().BeFalse();
        ChargingCurve.Through([new(0.5, double.NaN)]).LimitedTo(50e3).PowerAt(0.5).Should().Be(double.NaN);
        Curve.Time(Capacity, double.NaN, 0.8).Should().Be(double.NaN);
        Curve.Time(Capacity, 0.8, 0.1).Should().Be(0, "there is nothing to charge");
    }
}
