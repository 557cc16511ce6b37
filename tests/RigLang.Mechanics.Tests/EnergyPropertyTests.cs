using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Energy comes from somewhere and goes somewhere, and efficiencies below one never gain.</summary>
public sealed class EnergyPropertyTests
{
    private static RoadLoad Rig { get; } = new(3500, new Rolling(0.011), 2.2);

    [Property]
    public void What_leaves_the_battery_is_driven_lost_or_used_aboard(int grade, int speed, int efficiency, int regeneration, int limit)
    {
        var drive = new BatteryDrive(Between(efficiency, 0.6, 1), Between(regeneration, 0, 0.9), Between(limit, 0, 80e3), 800);
        var stretch = new RouteSegment(5000, Between(grade, -0.12, 0.12), Between(speed, 5, 35), 1.15);
        LegEnergy energy = drive.Over(Rig, stretch);

        double time = 5000 / stretch.Speed, recovered = (energy.Traction / drive.DriveEfficiency) + (800 * time) - energy.Battery;
        recovered.Should().BeInRange(-1e-6, Math.Min(energy.Braking * drive.Regeneration, drive.RegenerationPower * time) + 1e-3);
        energy.Brakes.Should().BeApproximately(energy.Braking - (drive.Regeneration > 0 ? recovered / drive.Regeneration : 0), 1e-3, "what is not recovered heats the brakes");
    }

    [Property]
    public void A_better_drive_takes_less_and_a_heavier_rig_more(int grade, int speed, int efficiency)
    {
        double share = Between(efficiency, 0.6, 0.94);
        var stretch = new RouteSegment(5000, Between(grade, 0, 0.12), Between(speed, 5, 35), 1.15);
        double Used(double drive, RoadLoad load) => new BatteryDrive(drive, 0.6, 1e5, 500).Over(load, stretch).Battery;
        Used(share + 0.05, Rig).Should().BeLessThan(Used(share, Rig));
        Used(share, Rig with { Mass = 3600 }).Should().BeGreaterThan(Used(share, Rig));
    }

    [Property]
    public void Twice_the_way_is_twice_the_energy(int grade, int speed)
    {
        var drive = new BatteryDrive(0.88, 0.6, 6e4, 700);
        var stretch = new RouteSegment(3000, Between(grade, -0.1, 0.1), Between(speed, 5, 35), 1.2);
        drive.Over(Rig, stretch with { Length = 6000 }).Battery.Should().BeApproximately(2 * drive.Over(Rig, stretch).Battery, 1);
    }

    [Property]
    public void The_energy_of_a_range_is_the_energy_of_that_drive(int kilowattHours, int speed)
    {
        double energy = Between(kilowattHours, 10, 120) * 3.6e6;
        var drive = new BatteryDrive(0.88, 0.6, 6e4, 700);
        var pace = new RouteSegment(1000, 0, Between(speed, 10, 35), 1.2);
        double range = drive.Range(energy, Rig, pace);
        drive.Over(Rig, pace with { Length = range }).Battery.Should().BeApproximately(energy, 1e-6 * energy);
    }

    [Property]
    public void Charging_puts_in_what_the_power_gives_in_the_time(int from, int to, int site)
    {
        double a = Between(from, 0.02, 0.6), b = a + Between(to, 0.01, 0.35), capacity = 80 * 3.6e6;
        ChargingCurve curve = ChargingCurve.Through([new(0.5, 150e3), new(1, 30e3)]).LimitedTo(Between(site, 20e3, 200e3));
        const int steps = 4000;
        double time = 0, step = (b - a) / steps;
        for (int i = 0; i < steps; i++)
            time += capacity * step / curve.PowerAt(a + ((i + 0.5) * step));
        curve.Time(capacity, a, b).Should().BeApproximately(time, 1e-5 * time, "the exact integral is what a fine sum tends to");
    }

    [Property]
    public void No_engine_gives_more_than_its_best_and_idles_on_something(int power, int map)
    {
        EngineMap engine = new[] { EngineMap.Petrol, EngineMap.Atkinson, EngineMap.Diesel }[Math.Abs(map % 3)];
        double crank = Between(power, 0, 100e3), fuel = engine.FuelPower(crank, 100e3);
        fuel.Should().BeGreaterThan(0);
        (crank / fuel).Should().BeLessThanOrEqualTo(engine.Best + 1e-12);
    }

    [Property]
    public void The_fastest_pace_is_a_minimum_of_the_door_to_door_time(int power, int auxiliary, int area)
    {
        double p = Between(power, 30e3, 250e3), a = Between(auxiliary, 100, 4000), d = Between(area, 0.6, 3);
        double best = PaceOptimum.FastestSpeed(0.86, p, a, 1.2, d);
        double Time(double v) => ((1 + (a / p)) / v) + (((3500 * Constants.Gravity * 0.01) + (0.6 * d * v * v)) / (0.86 * p));
        Time(best * 1.01).Should().BeGreaterThan(Time(best));
        Time(best * 0.99).Should().BeGreaterThan(Time(best));
        PaceOptimum.LeastEnergySpeed(0.86, a, 1.2, d).Should().BeLessThan(best);
    }

    [Property]
    public void Doubt_on_arrival_grows_with_each_of_its_parts(int start, int battery, int common, int leg)
    {
        double[] legs = [30 * 3.6e6, 20 * 3.6e6];
        TripDoubt doubt = new(Between(start, 0, 0.02), Between(battery, 0, 0.05), Between(common, 0, 0.1), Between(leg, 0, 0.1));
        double now = ArrivalCharge.After(0.9, 3.6e8, legs, doubt).Deviation;
        ArrivalCharge.After(0.9, 3.6e8, legs, doubt with { StartCharge = 0.05 }).Deviation.Should().BeGreaterThan(now);
        ArrivalCharge.After(0.9, 3.6e8, legs, doubt with { CommonShare = 0.2 }).Deviation.Should().BeGreaterThan(now);
        ArrivalCharge.After(0.9, 3.6e8, legs, doubt with { LegShare = 0.2 }).Deviation.Should().BeGreaterThan(now);
    }
}
