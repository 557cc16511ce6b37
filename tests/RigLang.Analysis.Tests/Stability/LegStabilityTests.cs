using RigLang.Analysis.Checks;
using RigLang.Analysis.Tests.Trips;

namespace RigLang.Analysis.Tests.Stability;

public sealed class LegStabilityTests
{
    private const string Swinging = """
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
            tongue 52.5 kg
            coupling-to-axle 4.00 m
            yaw-inertia 3600 kg·m²
            axle only
                cornering-stiffness 90 kN/rad
            aboard nothing

        rig r
            vehicle v
            trailer t
            speed 20 m/s


        """;

    [Theory]
    // The reference rig that swings by itself from 107.72 km/h: 20, 25 and 30 m/s.
    [InlineData("distance 10 km\nspeed 25 m/s", 0.079744)]
    [InlineData("distance 10 km", 0.191435)]
    [InlineData("distance 10 km\nspeed 30 m/s\nspeed-limit 20 m/s", 0.191435)]
    [InlineData("section 5 km at 0 % speed 20 m/s\nsection 5 km at -3 % speed 30 m/s", -0.001106)]
    [InlineData("speed 25 m/s\nsection 5 km at 0 %\nsection 5 km at -3 % speed 20 m/s", 0.079744)]
    public void A_leg_is_judged_at_the_highest_speed_it_asks_for(string leg, double damping) =>
        Journey.Leg(leg, Swinging).Value("leg-damping").Should().BeApproximately(damping, 1e-5);

    [Fact]
    public void A_leg_too_fast_for_the_rig_is_an_error_at_its_speed()
    {
        var text = Swinging + Journey.Trip("leg a\n    distance 10 km\n    speed 30 m/s\nleg b\n    distance 10 km\n    speed 20 m/s\n");

        var found = Study.Findings(text).Where(finding => finding.Check.Slug == "unstable-at-speed").ToList();

        found.Should().ContainSingle().Which.Place.Text.Should().Be("speed 30 m/s");
        found[0].Message.Should().StartWith("At 30 m/s on the leg to a, a swing grows by itself");
        AnalysisChecks.Find("unstable-at-speed")!.Severity.Should().Be(Syntax.Checks.Severity.Error);
    }
}
