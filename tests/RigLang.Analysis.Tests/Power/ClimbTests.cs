using static RigLang.Analysis.Tests.Power.PullingRig;

namespace RigLang.Analysis.Tests.Power;

public sealed class ClimbTests
{
    private static readonly double[] Gears = [4.2, 2.4, 1.5, 1.1, 0.85, 0.68];

    private const double Lasting = 80e3 * 0.98;

    /// <summary>Road load by hand: the train of 4900 kg, rolling 0.012, 2.6 m².</summary>
    private static double Resistance(double speed, double grade, double density = Density) =>
        (4900 * Gravity * (Math.Sin(Math.Atan(grade)) + (0.012 * Math.Cos(Math.Atan(grade))))) + (0.5 * density * 2.6 * speed * speed);

    [Fact]
    public void The_steepest_grade_takes_all_that_lasts()
    {
        var grade = Study.Rig(Of()).Value("steepest-grade");

        Resistance(80 / 3.6, grade).Should().BeApproximately(Lasting / (80 / 3.6), 0.01);
    }

    [Fact]
    public void Each_speed_has_its_grade_and_a_rig_can_be_asked_for_any()
    {
        var rig = Study.Rig(Of(rig: "    expect steepest-grade > 3 % at 60 km/h"));

        rig.AtSpeed(60 / 3.6).Value("steepest-grade").Should().BeGreaterThan(rig.Value("steepest-grade"));
        Study.Slugs(Of(rig: "    expect steepest-grade > 3 % at 60 km/h")).Should().NotContain("expectation-missed");
        Study.Slugs(Of(rig: "    expect steepest-grade > 30 % at 60 km/h")).Should().Contain("expectation-missed");
    }

    [Fact]
    public void On_a_long_hill_the_power_that_lasts_meets_the_resistance()
    {
        var rig = Study.Rig(Of());
        var speed = rig.Value("grade-speed");

        (Resistance(speed, 0.06) * speed).Should().BeApproximately(Lasting, 10);
        rig.Value("high-grade-speed").Should().BeGreaterThan(speed, "motors lose nothing, and thin air holds back less");
        rig.Result("power-left").Applies.Should().BeFalse();
    }

    [Fact]
    public void A_practice_says_which_hill()
    {
        var rig = Study.Rig(Of().Replace("assume friction 0.8", "assume friction 0.8\n    assume hill-grade 10 %\n    assume hill-altitude 3000 m"));
        var speed = rig.Value("grade-speed");

        (Resistance(speed, 0.10) * speed).Should().BeApproximately(Lasting, 10);
    }

    /// <summary>ISO 2533 at 2000 m: 1.0065 kg/m³ (geometric altitude 1.00649); natural breathing by the form of the model's documentation.</summary>
    [Fact]
    public void Thin_air_takes_from_an_engine_that_breathes_by_itself_and_less_from_a_turbo()
    {
        var natural = Study.Rig(Of(block: Diesel.Replace("turbo", "natural")));
        var turbo = Study.Rig(Of(block: Diesel));

        natural.Value("power-left").Should().BeApproximately(((1.00649 / 1.225) - 0.15) / 0.85, 1e-4);
        turbo.Value("power-left").Should().BeInRange(natural.Value("power-left"), 1);
        natural.Value("high-grade-speed").Should().BeLessThan(natural.Value("grade-speed"));
        Study.Rig(Of(block: Diesel.Replace("                aspiration turbo\n", "").Replace("        aspiration turbo\n", ""))).Result("power-left").Missing!.Words.Should().Contain("aspiration");
    }

    /// <summary>Every gear tried by hand at the speed found: none does more than hold it.</summary>
    [Fact]
    public void An_engine_climbs_in_the_gear_that_pulls_most()
    {
        var speed = Study.Rig(Of(block: Diesel)).Value("grade-speed");

        double Best(double at) => Gears.Max(gear => Pull(gear * 3.6, at));
        Best(speed - 0.01).Should().BeGreaterThanOrEqualTo(Resistance(speed - 0.01, 0.06));
        Best(speed + 0.01).Should().BeLessThan(Resistance(speed + 0.01, 0.06));
    }

    [Fact]
    public void An_engine_never_pulls_harder_than_its_rated_power()
    {
        var speed = Study.Rig(Of(block: Diesel.Replace("engine-power 120 kW", "engine-power 60 kW"))).Value("grade-speed");

        (Resistance(speed, 0.06) * speed).Should().BeLessThanOrEqualTo((60e3 * 0.9) + 1);
    }

    [Fact]
    public void Without_torque_and_gears_the_power_alone_climbs_but_does_not_start()
    {
        var rig = Study.Rig(Of(block: "    combustion\n        fuel diesel\n        engine-power 120 kW\n        driveline-efficiency 90 %"));
        var speed = rig.Value("grade-speed");

        (Resistance(speed, 0.06) * speed).Should().BeApproximately(120e3 * 0.9, 10);
        rig.Result("launch-grade-pull").Missing!.Words.Should().Contain("torque-point");
        rig.Result("time-to-80").Missing!.Words.Should().Contain("torque-point");
    }

    [Fact]
    public void The_peak_of_motors_is_never_taken_for_a_long_hill() =>
        Study.Rig(Of().Replace("                motor-power-lasting 80 kW\n", "").Replace("        motor-power-lasting 80 kW\n", "")).Result("grade-speed").Missing!.Words.Should().Contain("motor-power-lasting");

    [Fact]
    public void A_speed_beyond_the_power_is_told_at_its_line()
    {
        Study.Slugs(Of(speed: "150 km/h")).Should().Contain("speed-beyond-power");
        Study.Slugs(Of()).Should().NotContain("speed-beyond-power");
        Study.Rig(Of(speed: "150 km/h")).Value("steepest-grade").Should().BeNegative();
    }

    [FsCheck.Xunit.Property(MaxTest = 25)]
    public void The_steeper_the_hill_the_slower(byte first, byte second)
    {
        string On(double grade) => Of().Replace("assume friction 0.8", FormattableString.Invariant($"assume hill-grade {grade} %"));
        var (low, high) = (2 + (Math.Min(first, second) / 20.0), 2.5 + (Math.Max(first, second) / 20.0));

        Study.Rig(On(high)).Value("grade-speed").Should().BeLessThanOrEqualTo(Study.Rig(On(low)).Value("grade-speed"));
    }

    private static double Pull(double ratio, double speed)
    {
        var rpm = speed * ratio / Radius * 60 / (2 * Math.PI);
        var torque = rpm > 4000 ? 0 : rpm <= 1000 ? 250 : rpm <= 1600 ? 250 + (150 * (rpm - 1000) / 600) : rpm <= 2600 ? 400 : 400 - (120 * (rpm - 2600) / 1400);
        return Math.Min(torque * ratio / Radius * 0.9, 120e3 * 0.9 / speed);
    }
}
