using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values of launch and power, and what must hold of any drive.</summary>
public sealed class PowerTests
{
    private const double Mph = 1609.344 / 3600, Rpm = 2 * Math.PI / 60;

    private static RoadLoad Rig { get; } = new(4900, new Rolling(0.010), 2.6);

    private static Launch Start { get; } = new()
    {
        VehicleMass = 2400, Wheelbase = 3.0, MassCentre = 1.44, MassCentreHeight = 0.70, Overhang = 1.2, BallHeight = 0.45, TrailerMass = 2500, BallMass = 300,
        Rolling = 0.012, Friction = 0.8, Drive = DrivenAxle.Front,
    };

    private static ElectricDrive Electric { get; } = new(560, 180e3, 10.2, 0.35, 0.98, 16_000 * Rpm);

    private static GearedDrive Geared { get; } = new(
        [new(1000 * Rpm, 250), new(1600 * Rpm, 420), new(2800 * Rpm, 420), new(4000 * Rpm, 330), new(4500 * Rpm, 250)], [4.5, 2.6, 1.6, 1.15, 0.9, 0.7], 3.5, 0.36, 0.9);

    [Theory]
    [InlineData(DrivenAxle.Front, 0.799)]
    [InlineData(DrivenAxle.Rear, 0.479)]
    [InlineData(DrivenAxle.All, 0.299)]
    public void Starting_on_twelve_per_cent(DrivenAxle drive, double use)
    {
        LaunchResult start = (Start with { Drive = drive }).On(0.12);
        start.Loads.Front.Should().BeApproximately(9852.08, 0.006);
        start.Loads.Rear.Should().BeApproximately(16437.27, 0.006);
        start.Need.Should().BeApproximately(6297.76, 0.006);
        start.Use.Should().BeApproximately(use, 0.0006);
    }

    [Property]
    public void On_the_steepest_grade_to_start_on_all_grip_is_used(int friction, int axle)
    {
        Launch start = Start with { Friction = Between(friction, 0.2, 0.9), Drive = (DrivenAxle)(Math.Abs(axle % 3)) };
        double grade = start.SteepestGrade();
        if (grade is > 0 and < 1)
            start.On(grade).Use.Should().BeApproximately(1, 1e-6);
        start.SteepestGrade(3000).Should().BeLessThanOrEqualTo(grade);
    }

    [Fact]
    public void Spring_bars_help_a_front_drive_to_start()
    {
        var trailer = new TrailerLoad(2500, 300, 5);
        double couple = Hitch.CoupleForRestoration(new TowGeometry(new AxleLoads(12000, 11500), 3, 1.2), trailer, 1);
        Launch bars = Start with { Couple = couple, BallMass = 300 - (couple / 5 / Constants.Gravity) };
        bars.SteepestGrade().Should().BeGreaterThan(Start.SteepestGrade());
    }

    [Theory]
    [InlineData(0, 60, 30, 71.93)]
    [InlineData(0, 30, 12, 44.96)]
    [InlineData(40, 60, 18, 66.60)]
    public void Mean_power_of_a_6000_kg_rig(double from, double to, double time, double kilowatts) =>
        (SpeedGain.MeanPower(6000, from * Mph, to * Mph, time) / 1000).Should().BeApproximately(kilowatts, 0.02, "the reference rounds the speeds");

    [Fact]
    public void The_recalled_highway_climb_averages_five_per_cent()
    {
        double grade = Slope.FromRise(TowRatingCriteria.ClimbRise, TowRatingCriteria.ClimbLength);
        (TowRatingCriteria.ClimbRise / TowRatingCriteria.ClimbLength * 100).Should().BeApproximately(4.984, 0.0006);
        double power = new RoadLoad(6000, new Rolling(0), 0).GradeForce(grade) * TowRatingCriteria.ClimbSpeed(false);
        (power / 1000).Should().BeApproximately(52.44, 0.01);
    }

    [Property]
    public void The_steepest_grade_balances_the_force(int force, int speed)
    {
        double f = Between(force, 500, 15_000), v = Between(speed, 1, 35);
        double grade = Gradeability.SteepestGrade(Rig, f, v, 1.2);
        Rig.Force(v, 1.2, default, grade).Should().BeApproximately(f, 1e-6);
    }

    [Property]
    public void The_highest_speed_on_a_grade_uses_all_force(int grade)
    {
        double g = Between(grade, 0.02, 0.16);
        foreach (WheelDrive drive in (WheelDrive[])[Electric, Geared, new PowerDrive(90e3)])
        {
            double speed = Gradeability.HighestSpeed(Rig, drive, g, 1.2, 40);
            if (speed < 40 && speed > 0)
            {
                (drive.Force(speed) - Rig.Force(speed, 1.2, default, g)).Should().BeGreaterThanOrEqualTo(0);
                (drive.Force(speed + 0.01) - Rig.Force(speed + 0.01, 1.2, default, g)).Should().BeLessThan(0);
            }
        }
    }

    [Fact]
    public void A_grade_that_no_force_climbs_has_no_speed()
    {
        Gradeability.HighestSpeed(Rig, Electric, 0.9, 1.2, 30).Should().Be(0);
        Gradeability.SteepestGrade(Rig, 60_000, 5, 1.2).Should().Be(double.NaN);
    }

    [Property]
    public void No_drive_gives_more_than_its_power(int speed)
    {
        double v = Between(speed, 0.1, 45);
        Electric.Power(v).Should().BeLessThanOrEqualTo(180e3 * 0.98 + 1e-6);
        Geared.Power(v).Should().BeLessThanOrEqualTo(420 * 2800 * Rpm * 1.35);
        Electric.Force(v).Should().BeLessThanOrEqualTo(560 * 10.2 / 0.35 * 0.98 + 1e-6);
    }

    [Fact]
    public void A_motor_at_its_highest_speed_pulls_no_more()
    {
        double top = 16_000 * Rpm * 0.35 / 10.2;
        Electric.Force(top * 1.001).Should().Be(0);
        Electric.Force(top * 0.999).Should().BePositive();
        Geared.Force(120).Should().Be(0);
    }

    [Fact]
    public void A_constant_power_gains_kinetic_energy_at_its_rate()
    {
        var free = new RoadLoad(1000, new Rolling(0), 0, 0);
        SpeedGain gain = SpeedGain.Full(free, new PowerDrive(50e3), 10, 30, 1.2);
        gain.Time.Should().BeApproximately(1000 * (900 - 100) / 2 / 50e3, 1e-4);
        gain.Distance.Should().BeApproximately(1000 / 50e3 * (27_000 - 1000) / 3, 1e-2);
    }

    [Fact]
    public void A_heavier_rig_is_slower_and_a_steep_hill_stops_it()
    {
        double light = SpeedGain.Full(Rig with { Mass = 2400 }, Electric, 0, 25, 1.2).Time, heavy = SpeedGain.Full(Rig, Electric, 0, 25, 1.2).Time;
        heavy.Should().BeGreaterThan(light);
        SpeedGain.Full(Rig, Electric, 0, 25, 1.2, grade: 0.5).Time.Should().Be(double.NaN);
        SpeedGain.Full(Rig, Electric, 0, 25, 1.2, tractionLimit: 6000).Time.Should().BeGreaterThan(heavy);
    }

    [Property]
    public void A_run_up_reckoned_once_has_the_times_of_each_gain_by_itself(int first, int second)
    {
        double from = Between(first, 0, 20), to = from + Between(second, 1, 10);
        foreach (WheelDrive drive in (WheelDrive[])[Electric, Geared, new CappedDrive(Geared, 90e3)])
        {
            var run = new RunUp(Rig, drive, 30, 1.2, 9000);
            run.Time(from, to).Should().BeApproximately(SpeedGain.Full(Rig, drive, from, to, 1.2, tractionLimit: 9000).Time, 0.02);
        }
    }

    [Fact]
    public void A_run_up_ends_where_the_drive_does()
    {
        var weak = new RunUp(Rig, new PowerDrive(30e3), 30, 1.2);
        weak.Time(0, 10).Should().BePositive();
        weak.Time(0, 29).Should().Be(double.NaN);
        weak.Time(10, 5).Should().Be(double.NaN);
        weak.Time(0, 31).Should().Be(double.NaN);
        weak.Time(7, 7).Should().Be(0);
    }

    [Fact]
    public void A_capped_drive_gives_no_more_than_its_cap()
    {
        var capped = new CappedDrive(Electric, 50e3);
        capped.Power(20).Should().BeApproximately(50e3, 1e-6);
        capped.Force(0).Should().Be(Electric.Force(0));
        new CappedDrive(Electric, double.NaN).Force(5).Should().Be(double.NaN);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1000)]
    [InlineData(2500)]
    public void Thin_air_takes_more_from_an_engine_that_breathes_by_itself(double altitude)
    {
        double density = Atmosphere.AtGeometric(altitude).Density;
        double natural = AltitudeLoss.Share(density, Aspiration.Natural), turbo = AltitudeLoss.Share(density, Aspiration.Turbo);
        natural.Should().BeInRange(0.6, 1);
        turbo.Should().BeInRange(natural, 1);
        Electric.Times(natural).Force(10).Should().BeApproximately(Electric.Force(10) * natural, 1e-9);
    }

    [Fact]
    public void What_is_not_known_of_a_drive_is_not_computable()
    {
        new ElectricDrive(double.NaN, 1e5, 10, 0.35).Force(5).Should().Be(double.NaN);
        new GearedDrive([], [4.5], 3.5, 0.36, 0.9).Force(5).Should().Be(double.NaN);
        new GearedDrive([new(100, 200)], [4.5, double.NaN], 3.5, 0.36, 0.9).Force(5).Should().Be(double.NaN);
        new GearedDrive([new(100, 200)], [], 3.5, 0.36, 0.9).Force(5).Should().Be(double.NaN);
        Gradeability.HighestSpeed(Rig, new PowerDrive(double.NaN), 0.05, 1.2, 30).Should().Be(double.NaN);
        (Start with { Friction = double.NaN }).SteepestGrade().Should().Be(double.NaN);
        SpeedGain.Full(Rig, Electric, double.NaN, 20, 1.2).Time.Should().Be(double.NaN);
    }
}
