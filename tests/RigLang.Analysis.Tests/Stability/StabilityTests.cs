using RigLang.Analysis.Results.Stability;

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

    /// <summary>Parameters read in open multibody samples of B. P. Minaker; results computed by two formulations of the model.</summary>
    private static string OpenSet(double toMassCentre) => FormattableString.Invariant($"""
        vehicle v
            wheelbase 2.885 m
            overhang 1.104 m
            yaw-inertia 3508 kg·m²
            axle front
                carries {16975 / 9.81 * 1.596 / 2.885:F6} kg
                cornering-stiffness 80 kN/rad
            axle rear
                carries {16975 / 9.81 * 1.289 / 2.885:F6} kg
                cornering-stiffness 80 kN/rad
            aboard nothing

        trailer t
            mass 2000 kg
            tongue {2000 * (3 - toMassCentre) / 3:F6} kg
            coupling-to-axle 3.00 m
            yaw-inertia 3000 kg·m²
            axle only
                cornering-stiffness 80 kN/rad
            aboard nothing

        rig r
            vehicle v
            trailer t
            speed 18 m/s
        """);

    [Fact]
    public void An_open_parameter_set_with_a_heavy_tongue_turns_away_and_never_swings()
    {
        var rig = Study.Rig(OpenSet(2.7));

        Mechanics.Understeer.DegreesPerG(rig.Value("understeer")).Should().BeApproximately(-1.1869, 6e-5);
        rig.Value("divergence-speed").Should().BeApproximately(36.9623, 6e-5);
        rig.Value("damping").Should().BeApproximately(0.17327, 6e-6);
        rig.Result("swing-speed").Refusal.Should().StartWith("none up to 200 km/h");
    }

    [Fact]
    public void The_same_with_a_light_tongue_swings_and_never_turns_away()
    {
        var rig = Study.Rig(OpenSet(2.9));

        Mechanics.Understeer.DegreesPerG(rig.Value("understeer")).Should().BeApproximately(0.4668, 6e-5);
        rig.Value("swing-speed").Should().BeApproximately(18.4001, 6e-5);
        rig.Value("damping").Should().BeApproximately(0.00920, 6e-6);
        rig.Result("divergence-speed").Refusal.Should().StartWith("none up to 200 km/h");
    }

    [Fact]
    public void The_speed_of_turning_away_knows_nothing_of_the_trailer_but_its_tongue()
    {
        // Stated in the introduction of Hac, Fulk and Chen, SAE 2008-01-1228 (read in the abstract).
        double Of(string text = "2000 kg", string other = "2000 kg") => Study.Rig(OpenSet(2.7).Replace(text, other)).Value("divergence-speed");
        var plain = Of();

        Of("yaw-inertia 3000 kg·m²", "yaw-inertia 5000 kg·m²").Should().BeApproximately(plain, 1e-9);
        Of("coupling-to-axle 3.00 m", "coupling-to-axle 4.00 m").Should().BeApproximately(plain, 1e-9);
        Of("axle only\n        cornering-stiffness 80 kN/rad", "axle only\n        cornering-stiffness 60 kN/rad").Should().BeApproximately(plain, 1e-9);
        Of("tongue 200.000000 kg", "tongue 150 kg").Should().BeGreaterThan(plain);
    }

    /// <summary>After Wong, Theory of Ground Vehicles, example 5.1(a), value from memory: 20.105 kN, 53.5 % in front, 0.92° for each g.</summary>
    [Fact]
    public void A_vehicle_alone_has_its_understeer_too()
    {
        var rig = Study.Rig(FormattableString.Invariant($"""
            vehicle v
                wheelbase 2.8 m
                mass {20105 / 9.81:F6} kg
                front-share 53.5 %
                axle front
                    cornering-stiffness 77.84 kN/rad
                axle rear
                    cornering-stiffness 76.50 kN/rad
                aboard nothing

            rig r
                vehicle v
            """));

        Mechanics.Understeer.DegreesPerG(rig.Value("understeer")).Should().BeApproximately(0.92, 0.005);
        rig.Result("understeer").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void A_wide_swing_has_only_the_damping_without_friction()
    {
        var bare = Study.Rig(Rig("speed 100 km/h"));
        var held = Study.Rig(Rig("speed 100 km/h").Replace("    yaw-inertia 3600", "    yaw-friction 60 N·m\n    yaw-inertia 3600"));

        bare.Result("large-swing-damping").Applies.Should().BeFalse();
        held.Value("large-swing-damping").Should().BeApproximately(bare.Value("damping"), 1e-12);
    }

    [Fact]
    public void What_is_in_doubt_spreads_the_damping_and_what_is_written_does_not()
    {
        Study.Rig(Rig("speed 100 km/h")).Result("damping-spread").Applies.Should().BeFalse();
        var one = Study.Rig(Rig("speed 100 km/h", inertia: "3600 kg·m² ± 10 %"));
        var more = Study.Rig(Rig("speed 100 km/h", inertia: "3600 kg·m² ± 20 %"));
        var all = Study.Rig(Rig("speed 100 km/h", inertia: "3600 kg·m² ± 20 %").Replace("cornering-stiffness 90 kN/rad", "axle-rating 1600 kg"));

        // To first order the damping of 3960 kg·m² lies one half-width away.
        one.Value("damping-spread").Should().BeApproximately(one.Value("damping") - Study.Rig(Rig("speed 100 km/h", inertia: "3960 kg·m²")).Value("damping"), 1e-9);
        more.Value("damping-spread").Should().BeGreaterThan(one.Value("damping-spread"));
        all.Value("damping-spread").Should().BeGreaterThan(more.Value("damping-spread"));
        all.Result("damping").IsEstimated.Should().BeTrue();
    }

    [Fact]
    public void Cargo_at_the_ends_of_the_trailer_damps_less_than_the_same_by_the_axle()
    {
        string Loaded(string places) => Rig("speed 100 km/h\nload l") + $"\n\nload l\n    on trailer\n{places}";

        // The same mass and the same tongue: two halves far apart, or both at the axle.
        var ends = Study.Rig(Loaded("        item a 50 kg at 2 m ahead of axle\n        item b 50 kg at 2 m behind axle"));
        var middle = Study.Rig(Loaded("        item a 100 kg at axle"));

        ends.Value("tongue-load").Should().BeApproximately(middle.Value("tongue-load"), 1e-9);
        ends.Value("damping").Should().BeLessThan(middle.Value("damping"));
    }

    /// <summary>Signs that published work agrees on: IMechE C132/83 and Darling, Tilley and Gao 2009, abstracts read.</summary>
    [FsCheck.Xunit.Property(MaxTest = 25)]
    public void The_published_trends_hold_in_sign(ushort tongue, ushort inertia, ushort more)
    {
        var (kilograms, moment, step) = (30 + (tongue % 100), 2600 + (inertia % 2000), 1 + (more % 20));
        double Of(double mass, double yaw, string text = "", string other = "") =>
            Study.Rig(Rig("speed 90 km/h", FormattableString.Invariant($"{mass} kg"), FormattableString.Invariant($"{yaw} kg·m²")).Replace(text.Length == 0 ? "\0" : text, other)).Value("damping");

        var plain = Of(kilograms, moment);
        Of(kilograms + step, moment).Should().BeGreaterThan(plain, "a heavier tongue steadies");
        Of(kilograms, moment + (20 * step)).Should().BeLessThan(plain, "yaw inertia unsteadies");
        Of(kilograms, moment, "stiffness 90 kN/rad", FormattableString.Invariant($"stiffness {90 + step} kN/rad")).Should().BeGreaterThan(plain, "stiffer trailer tyres steady");
        Of(kilograms, moment, "overhang 1.05 m", FormattableString.Invariant($"overhang {1.05 + (0.01 * step)} m")).Should().BeLessThan(plain, "overhang unsteadies");
        Of(kilograms, moment, "speed 90 km/h", FormattableString.Invariant($"speed {90 + step} km/h")).Should().BeLessThan(plain, "speed unsteadies");
    }

    /// <summary>Eigenvalues computed by two formulations: −6.249329 ± 2.780589j and −0.302168 ± 3.777174j at 25 m/s.</summary>
    [Fact]
    public void Every_motion_is_told_the_least_damped_first()
    {
        var motions = Motions.Of(Study.Rig(Rig("speed 25 m/s")));

        motions.Should().HaveCount(2);
        motions[0].Damping.Should().BeApproximately(0.079744, 1e-5);
        motions[0].Frequency.Should().BeApproximately(3.777174 / (2 * Math.PI), 1e-5);
        motions[0].Halving.Should().BeApproximately(Math.Log(2) / 0.302168, 1e-3);
        motions[1].Halving.Should().BeApproximately(Math.Log(2) / 6.249329, 1e-5);
        Motions.Of(Study.Rig(Rig("speed 31 m/s")))[0].Halving.Should().BeNegative("it grows");
    }

    [Fact]
    public void Damping_falls_with_speed_and_is_told_for_several()
    {
        var rig = Study.Rig(Rig("speed 60 km/h"));
        var curve = Motions.Curve(rig, [20, 25, 30]);

        curve.Select(point => point.Damping.Value).Should().BeInDescendingOrder();
        curve[1].Damping.Value.Should().BeApproximately(0.079744, 1e-5);
    }

    /// <summary>Load-sensitive stiffness: bars bring load, and with it grip, back to the front and take both from the rear, so the rig turns in more readily.</summary>
    [Fact]
    public void Restoration_takes_from_the_understeer_of_estimated_tyres()
    {
        string Barred(int share) => Rig($"speed 90 km/h\nhitch h\nrestoration {share} %", tongue: "90 kg").Replace("        cornering-stiffness 110 kN/rad", "        axle-rating 1100 kg")
            .Replace("        cornering-stiffness 150 kN/rad", "        axle-rating 1100 kg") + "\n\nhitch h\n    type weight-distributing\n    mass 0 kg";
        double Of(int share) => Study.Rig(Barred(share)).Value("understeer");

        Of(50).Should().BeLessThan(Of(0));
        Of(100).Should().BeLessThan(Of(50));
    }
}
