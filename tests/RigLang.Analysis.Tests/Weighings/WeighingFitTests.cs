namespace RigLang.Analysis.Tests.Weighings;

/// <summary>All readings of a weighing at once: what the reference rig weighs by the statics, in, and the rig out.</summary>
public sealed class WeighingFitTests
{
    private const string AllFour = """
            pass solo
                scale front 1250 kg
                scale rear 1150 kg
            pass slack
                scale front 1130 kg
                scale rear 1570 kg
                scale trailer 2200 kg
            pass tight
                scale front 1190 kg
                scale rear 1481 kg
                scale trailer 2229 kg
            pass trailer
                scale trailer 2200 kg
                scale tongue 300 kg
        """;

    private static string Weighed(string passes, string load = "") =>
        Rigs.Plain(load.Length == 0 ? "restoration 50 %" : "restoration 50 %\nload l") + "\n\n" + load + "\n\nweighing w\n    rig r\n    date 2026-05-02\n    scale-step 1 kg\n" + passes;

    [Fact]
    public void All_readings_together_give_the_rig_back()
    {
        var weighing = Study.Weighing(Weighed(AllFour));

        weighing.Value("fitted-tongue").Should().BeApproximately(300, 0.1);
        weighing.Value("fitted-trailer-mass").Should().BeApproximately(2500, 0.1);
        weighing.Value("fitted-couple").Should().BeApproximately(1423.5, 3);
        weighing.Value("fitted-mass-centre").Should().BeApproximately(4.4, 0.001);
        weighing.Value("readings-spread").Should().BeLessThan(0.5);
        weighing.Value("largest-misfit").Should().BeLessThan(0.5);
    }

    [Fact]
    public void Two_weighings_of_the_trailer_alone_are_enough_for_its_mass_centre()
    {
        var weighing = Study.Weighing(Weighed("    pass trailer \"whole\"\n        scale trailer tongue 2500 kg\n    pass trailer \"axles\"\n        scale trailer 2200 kg\n"));

        weighing.Value("fitted-tongue").Should().BeApproximately(300, 1e-6);
        weighing.Value("fitted-mass-centre").Should().BeApproximately(4.4, 1e-9);
        weighing.Result("readings-spread").Applies.Should().BeFalse("nothing is in excess");
        weighing.Result("fitted-couple").Applies.Should().BeFalse();
    }

    [Fact]
    public void The_days_load_is_taken_off_by_mass_and_place()
    {
        var text = Weighed(
            AllFour,
            """
            load l
                on trailer
                    item firewood 200 kg at 2.5 m behind coupling
            """);
        var weighing = Study.Weighing(text);

        // 200 kg half way between coupling and axle: half of them on the tongue.
        weighing.Value("unloaded-trailer-mass").Should().BeApproximately(2300, 0.1);
        weighing.Value("unloaded-tongue").Should().BeApproximately(200, 0.1);
        weighing.Value("unloaded-mass-centre").Should().BeApproximately(5 * (1 - (200.0 / 2300)), 0.001);
    }

    [Fact]
    public void Who_sat_in_one_pass_only_is_reckoned_in()
    {
        var text = Weighed(
            AllFour.Replace("scale rear 1150 kg", "scale rear 1150 kg\n        absent item driver").Replace("front 1130", "front 1180").Replace("rear 1570", "rear 1620")
                .Replace("front 1190", "front 1240").Replace("rear 1481", "rear 1531"),
            """
            load l
                on vehicle
                    item driver 100 kg at 1.5 m behind front-axle
            """);
        var weighing = Study.Weighing(text);

        weighing.Value("tongue-by-front-axle").Should().BeApproximately(300, 0.1);
        weighing.Value("fitted-tongue").Should().BeApproximately(300, 0.1);
    }

    [Fact]
    public void The_reading_out_of_line_is_named_with_what_the_others_make_of_it()
    {
        var findings = Study.Findings(Weighed(AllFour.Replace("rear 1570", "rear 1750"))).Where(finding => finding.Check.Slug == "reading-out-of-line").ToList();

        findings.Should().ContainSingle();
        findings[0].Message.Should().Contain("make this 1570 kg instead of 1750 kg");
    }

    [Fact]
    public void A_difference_that_no_single_reading_explains_is_blamed_on_none()
    {
        Study.Slugs(Weighed(AllFour.Replace("rear 1570", "rear 1750").Replace("trailer 2229", "trailer 2140").Replace("front 1250", "front 1310")))
            .Should().NotContain("reading-out-of-line");
    }

    [Fact]
    public void Axles_of_the_trailer_that_were_read_one_by_one_count_together()
    {
        var text = Weighed(AllFour.Replace("scale trailer 2229 kg", "scale fore 1114 kg\n        scale aft 1115 kg"))
            .Replace("axle only", "axle fore\n        axle-rating 2600 kg\n        behind-coupling 4.6 m\n    axle aft\n        behind-coupling 5.4 m");

        Study.Weighing(text).Value("fitted-couple").Should().BeApproximately(1423.5, 3);
        Study.Weighing(text.Replace("        scale aft 1115 kg\n", "")).Value("fitted-couple").Should().BeApproximately(1423.5, 3, "one axle of two says nothing, the vehicle's still do");
    }
}
