using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;
using static RigLang.Analysis.Tests.Power.PullingRig;

namespace RigLang.Analysis.Tests.Power;

public sealed class LegClimbTests
{
    private static string Trip(string legs, string block = "", string drive = "front") => (block.Length > 0 ? Of(drive, block, rest: Out(legs)) : Of(drive, rest: Out(legs)));

    private static string Out(string legs) => $"trip out\n    rig r\n    start home\n    start-charge 90 %\n    leg hill\n        {legs.Replace("\n", "\n        ")}";

    private static LegSubject Leg(string text)
    {
        var analysis = Study.Of(text);
        return analysis.Trip(analysis.Workspace.Find(Study.File, DeclarationKind.Trip, "out")!)!.Legs[0];
    }

    [Fact]
    public void The_steepest_section_counts_in_its_own_air_and_wind()
    {
        var leg = Leg(Trip("section 5 km at 2 %\nsection 2 km at 7 %\nsection 3 km at -9 %\nair 15 °C\naltitude 0 m\nwind 18 km/h head\nspeed 60 km/h"));
        var speed = leg.Value("leg-grade-speed");

        leg.Value("leg-grade").Should().BeApproximately(0.07, 1e-12);
        // 5 km at 2 % and half of the 2 km at 7 %: some 170 m up, where the air is 1.6 % thinner.
        var force = (4900 * Gravity * (Math.Sin(Math.Atan(0.07)) + (0.012 * Math.Cos(Math.Atan(0.07))))) + (0.5 * 1.2052 * 2.6 * (speed + 5) * (speed + 5));
        (force * speed).Should().BeApproximately(80e3 * 0.98, 150);
    }

    [Fact]
    public void It_is_the_speed_at_which_the_leg_is_driven_when_more_is_wished()
    {
        var leg = Leg(Trip("section 4 km at 9 %\nspeed 90 km/h"));

        (leg.Value("leg-distance") / leg.Value("leg-time")).Should().BeApproximately(leg.Value("leg-grade-speed"), 0.01);
        Study.Slugs(Trip("section 4 km at 9 %\nspeed 90 km/h")).Should().Contain("power-runs-out");
    }

    [Fact]
    public void Gears_count_on_a_leg_too()
    {
        var text = Trip("section 4 km at 9 %\nspeed 90 km/h\naltitude 0 m\nair 15 °C\nwind 0 km/h head", Diesel).Replace("start-charge 90 %", "start-fuel 40 L").Replace("    combustion", "    tank fuel 60 L diesel at 2 m behind front-axle\n    combustion");
        var leg = Leg(text);

        (leg.Value("leg-distance") / leg.Value("leg-time")).Should().BeApproximately(leg.Value("leg-grade-speed"), 0.01);
        leg.Value("fuel-used").Should().BePositive();
    }

    [Fact]
    public void The_most_power_wished_is_that_of_the_hardest_stretch()
    {
        var leg = Leg(Trip("section 5 km at 0 %\nsection 2 km at 4 % speed 50 km/h\nair 15 °C\naltitude 0 m\nwind 0 km/h head\nspeed 90 km/h"));

        var level = ((4900 * Gravity * 0.012) + (0.5 * Density * 2.6 * 25 * 25)) * 25;
        var climb = ((4900 * Gravity * (Math.Sin(Math.Atan(0.04)) + (0.012 * Math.Cos(Math.Atan(0.04))))) + (0.5 * 1.2205 * 2.6 * 193)) * 50 / 3.6;
        leg.Value("leg-wheel-power").Should().BeApproximately(Math.Max(level, climb), 60);
    }

    [Fact]
    public void Where_hills_are_only_sums_their_places_are_asked_for_and_a_level_leg_has_none()
    {
        Leg(Trip("distance 20 km\nclimb 300 m\ndescent 100 m\nspeed 60 km/h")).Result("leg-grade").Missing!.Words.Should().Contain("section");
        Leg(Trip("section 20 km at -1 %\nspeed 60 km/h")).Result("leg-grade").Applies.Should().BeFalse();
        Leg(Trip("section 20 km at -1 %\nspeed 60 km/h")).Result("leg-grade-speed").Applies.Should().BeFalse();
    }

    [Theory]
    [InlineData("5 %", false)]
    [InlineData("28 %", true)]
    public void A_climb_that_the_rig_cannot_start_on_is_told(string grade, bool isTold)
    {
        var findings = Study.Findings(Trip($"section 1 km at {grade}\nspeed 20 km/h")).Where(finding => finding.Check.Slug == "cannot-start-on-climb").ToList();

        findings.Should().HaveCount(isTold ? 1 : 0);
        if (isTold)
        {
            findings[0].Message.Should().Contain("climbs 28.0 %").And.Contain("by grip: if it must stop");
        }
    }
}
