namespace RigLang.Analysis.Tests.Loads;

/// <summary>The reference rig computed by two independent formulations of the statics, here through the language.</summary>
public sealed class DistributingHitchTests
{
    [Theory]
    [InlineData("0 %", 0, 300.000, 1130.000, 1570.000, 2200.000)]
    [InlineData("50 %", 1423.5, 270.968, 1190.000, 1480.968, 2229.032)]
    [InlineData("100 %", 2847.1, 241.935, 1250.000, 1391.935, 2258.065)]
    public void Restoration_moves_load_to_the_front_and_to_the_trailer(string restoration, double couple, double ball, double front, double rear, double trailer)
    {
        var rig = Study.Rig(Rigs.Plain($"restoration {restoration}"));

        rig.Value("bar-couple").Should().BeApproximately(couple, 0.05);
        rig.Value("ball-load").Should().BeApproximately(ball, 0.0005);
        rig.Value("front-axle-load").Should().BeApproximately(front, 0.0005);
        rig.Value("rear-axle-load").Should().BeApproximately(rear, 0.0005);
        rig.Value("trailer-axle-load").Should().BeApproximately(trailer, 0.0005);
        rig.Value("train-load").Should().BeApproximately(4900, 1e-9);
        rig.Value("tongue-load").Should().BeApproximately(300, 1e-9, "set bars change the net load at the ball, not what the trailer brings");
    }

    [Theory]
    [InlineData("restoration 0 %", 4903.3, -1961.3, 882.6)]
    [InlineData("restoration 100 %", -2372.6, 4745.2, -2135.3)]
    public void Mounts_feel_the_ball_and_the_couple(string line, double rear, double forward, double bending)
    {
        var rig = Study.Rig(Rigs.Plain(line));

        rig.Value("rear-mount-force").Should().BeApproximately(rear, 0.05);
        rig.Value("forward-mount-force").Should().BeApproximately(forward, 0.05);
        rig.Value("mount-bending").Should().BeApproximately(bending, 0.05);
        rig.Value("rear-mount-slack").Should().BeApproximately(4903.3, 0.05);
    }

    [Fact]
    public void A_practice_may_multiply_the_force_at_the_mounts_for_bumps()
    {
        var bumpy = Rigs.Plain("restoration 0 %\n    practice rough") + "\n\npractice rough\n    assume dynamic-factor 2\n";

        Study.Rig(Rigs.Plain("restoration 0 %")).Value("mount-peak").Should().BeApproximately(4903.3, 0.05);
        Study.Rig(bumpy).Value("mount-peak").Should().BeApproximately(2 * 4903.3, 0.1);
    }

    [Theory]
    [InlineData("restoration 0 %", 108.47, 1.7885)]
    [InlineData("restoration 100 %", 57.27, 0.7813)]
    public void The_ball_comes_down_and_the_nose_up(string line, double millimetres, double degrees)
    {
        var rig = Study.Rig(Rigs.Plain(line));

        (rig.Value("ball-drop") * 1000).Should().BeApproximately(millimetres, 0.005);
        (rig.Value("vehicle-pitch") * 180 / Math.PI).Should().BeApproximately(degrees, 0.0001);
        (rig.Value("ball-level") * 1000).Should().BeApproximately(-millimetres, 0.005);
    }

    [Fact]
    public void Couple_and_bar_force_say_the_same_as_restoration()
    {
        var wanted = Study.Rig(Rigs.Plain("restoration 50 %"));
        var couple = wanted.Value("bar-couple");

        Study.Rig(Rigs.Plain($"couple {couple:F6} N·m")).Value("restored-share").Should().BeApproximately(0.5, 1e-6);
        Study.Rig(Rigs.Plain($"bar-force {couple / 2 / 0.75:F6} N")).Value("front-axle-load").Should().BeApproximately(wanted.Value("front-axle-load"), 1e-6);
        wanted.Value("bar-lift").Should().BeApproximately(couple / 2 / 0.75, 1e-9);
    }

    [Fact]
    public void Without_any_of_the_three_the_set_state_is_not_guessed()
    {
        var node = Study.Rig(Rigs.Plain("speed 80 km/h")).Result("front-axle-load");

        node.IsComputed.Should().BeFalse();
        node.Missing!.Words.Should().Be("`restoration` of rig r");
        Study.Rig(Rigs.Plain("speed 80 km/h")).Value("front-axle-slack").Should().BeApproximately(1130, 1e-9);
    }
}
