
namespace RigLang.Analysis.Tests.Stability;

public sealed class StabilityTests
{
    private static string Rig(string rigLines, string tongue = "52.5 kg", string inertia = "3600 kg·m²") => $"""
        vehicle v
            wheelbase 2.70 m
            overhang 1.05 m
            yaw-inertia 2600 kg·m²
            axle front
                carries 888.8889 kg
                cornering-stiffness 110 kN/rad
            axle rear
                carries 711.1111 kg
                cornering-stiffness 150 kN/rad
            aboard nothing

        trailer t
            mass 1400 kg
            tongue {tongue}
            coupling-to-axle 4.00 m
            yaw-inertia {inertia}
            axle only
                cornering-stiffness 90 kN/rad
            aboard nothing

        rig r
            vehicle v
            trailer t
        {string.Join('\n', rigLines.Split('\n').Select(line => "    " + line.Trim()))}
        """;

    [Theory]
    [InlineData(20, 0.191435)]
    [InlineData(25, 0.079744)]
    [InlineData(30, -0.001106)]
    public void Damping_is_that_of_the_reference_rig(double speed, double expected)
    {
        // Computed by two independent formulations of the single-track model; its speed of growing swings is 107.72 km/h.
        Study.Rig(Rig($"speed {speed} m/s")).Value("damping").Should().BeApproximately(expected, 1e-5);
        (Study.Rig(Rig($"speed {speed} m/s")).Value("swing-speed") * 3.6).Should().BeApproximately(107.72, 0.01);
    }

    [Fact]
    public void More_on_the_tongue_damps_more_and_more_inertia_less()
    {
        // The trend that published work agrees on: Darling, Tilley and Gao 2009, abstract.
        var plain = Study.Rig(Rig("speed 100 km/h")).Value("damping");

        Study.Rig(Rig("speed 100 km/h", tongue: "140 kg")).Value("damping").Should().BeGreaterThan(plain);
        Study.Rig(Rig("speed 100 km/h", inertia: "5000 kg·m²")).Value("damping").Should().BeLessThan(plain);
    }

    [Fact]
    public void An_expectation_may_name_its_own_speed()
    {
        Study.Slugs(Rig("speed 60 km/h\nexpect damping > 0.10 at 80 km/h")).Should().NotContain("expectation-missed");
        Study.Slugs(Rig("speed 60 km/h\nexpect damping > 0.10 at 100 km/h")).Should().Contain("expectation-missed");
    }

    [Fact]
    public void A_friction_head_damps_one_degree_of_swing()
    {
        var without = Study.Rig(Rig("speed 100 km/h")).Value("damping");
        var with = Study.Rig(Rig("speed 100 km/h").Replace("    yaw-inertia 3600", "    yaw-friction 60 N·m\n    yaw-inertia 3600")).Value("damping");

        with.Should().BeGreaterThan(without);
    }
}
