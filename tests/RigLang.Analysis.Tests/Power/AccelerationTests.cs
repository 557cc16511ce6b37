using RigLang.Analysis.Results.Power;
using static RigLang.Analysis.Tests.Power.PullingRig;

namespace RigLang.Analysis.Tests.Power;

public sealed class AccelerationTests
{
    /// <summary>The same motion by stepping through time, a thousandth of a second each, with forces written out here.</summary>
    [Theory]
    [InlineData("time-to-50", 50)]
    [InlineData("time-to-80", 80)]
    [InlineData("time-to-100", 100)]
    public void Times_agree_with_stepping_through_time(string result, double speed)
    {
        // Front drive: friction 0.8 on what the front axle carries, 1248 kg less 300 · 1.2 ÷ 3.
        Study.Rig(Of()).Value(result).Should().BeApproximately(ByStepping(speed / 3.6, 0.8 * (1248 - 120) * Gravity), 0.01);
        Study.Rig(Of("all")).Value(result).Should().BeApproximately(ByStepping(speed / 3.6, double.PositiveInfinity), 0.01);
    }

    [Fact]
    public void On_ice_the_grip_sets_the_time()
    {
        var ice = Study.Rig(Of().Replace("friction 0.8", "friction 0.15"));

        ice.Value("time-to-50").Should().BeApproximately(ByStepping(50 / 3.6, 0.15 * (1248 - 120) * Gravity), 0.02);
        ice.Value("time-to-50").Should().BeGreaterThan(2 * Study.Rig(Of()).Value("time-to-50"));
    }

    [Fact]
    public void A_speed_that_is_never_reached_has_no_time()
    {
        var weak = Study.Rig(Of().Replace("motor-power 150 kW", "motor-power 35 kW"));

        weak.Result("time-to-50").IsComputed.Should().BeTrue();
        weak.Result("time-to-100").Applies.Should().BeFalse();
    }

    [Fact]
    public void What_the_standard_is_remembered_to_ask_stands_beside_and_judges_nothing()
    {
        var rig = Study.Rig(Of().Replace("motor-power 150 kW", "motor-power 75 kW"));
        var result = AccelerationResults.TimeTo60Mph;
        var time = rig.Value("time-to-60-mph");

        time.Should().BeInRange(rig.Value("time-to-80"), rig.Value("time-to-100"));
        result.Write(rig, time, Quantities.DisplaySystem.Us).Should().Contain("30 s asked, from memory");
        Study.Findings(Of().Replace("motor-power 150 kW", "motor-power 60 kW")).Should().OnlyContain(finding => !finding.Message.Contains("J2807"));
    }

    [Fact]
    public void Dual_rear_wheels_are_asked_less()
    {
        var rig = Study.Rig(Of().Replace("    axle rear\n", "    axle rear\n        wheels 4\n"));

        AccelerationResults.TimeTo60Mph.Write(rig, 20, Quantities.DisplaySystem.Us).Should().Contain("35 s asked");
    }

    private static double ByStepping(double target, double grip)
    {
        double speed = 0, time = 0;
        const double step = 0.001;
        while (speed < target)
        {
            var motor = speed * 10 / Radius;
            var torque = motor > 0 ? Math.Min(400, 150e3 / motor) : 400;
            var pull = Math.Min(torque * 10 / Radius * 0.98, grip);
            speed += step * (pull - (4900 * Gravity * 0.012) - (0.5 * Density * 2.6 * speed * speed)) / (4900 * 1.03);
            time += step;
        }

        return time;
    }
}
