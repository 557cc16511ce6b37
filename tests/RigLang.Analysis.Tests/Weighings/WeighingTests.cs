namespace RigLang.Analysis.Tests.Weighings;

/// <summary>The reference rig put on the scale: what went in must come out.</summary>
public sealed class WeighingTests
{
    private static string Weighed(string passes, string rigLines = "restoration 50 %") =>
        Rigs.Plain(rigLines) + "\n\nweighing w\n    rig r\n    date 2026-05-02\n    scale-step 1 kg\n" + passes;

    private const string Three = """
            pass solo
                scale front 1250 kg
                scale rear 1150 kg
            pass slack
                scale front left 566 kg
                scale front right 564 kg
                scale rear 1570 kg
                scale trailer 2200 kg
            pass tight
                scale front 1190 kg
                scale rear 1481 kg
                scale trailer 2229 kg
        """;

    [Fact]
    public void Three_passes_give_tongue_couple_and_restoration_back()
    {
        var weighing = Study.Weighing(Weighed(Three));

        weighing.Value("tongue-by-front-axle").Should().BeApproximately(300, 0.01);
        weighing.Value("tongue-by-rear-axle").Should().BeApproximately(300, 0.01);
        weighing.Value("tongue-weighed").Should().BeApproximately(300, 0.01);
        weighing.Value("couple-by-front-axle").Should().BeApproximately(1423.5, 1);
        weighing.Value("couple-by-trailer-axles").Should().BeApproximately(1423.5, 5);
        weighing.Value("restoration-weighed").Should().BeApproximately(0.5, 1e-9);
    }

    [Fact]
    public void Two_wheels_make_one_reading_which_is_held_against_the_model()
    {
        var slack = Study.Weighing(Weighed(Three)).Pass("slack")!;

        slack.Readings.Select(reading => reading.Axles).Should().Equal("front", "rear", "trailer");
        slack.Reading("front")!.Value("scale-reading").Should().Be(1130);
        slack.Reading("front")!.Value("scale-gap").Should().BeApproximately(0, 1e-9);
    }

    [Fact]
    public void One_wheel_alone_is_compared_with_nothing()
    {
        var weighing = Study.Weighing(Weighed("    pass solo\n        scale front left 620 kg\n"));

        weighing.Passes[0].Readings.Single().Result("scale-gap").Applies.Should().BeFalse();
    }

    [Fact]
    public void A_good_weighing_has_no_findings()
    {
        Study.Slugs(Weighed(Three)).Where(slug => slug.StartsWith("weigh", StringComparison.Ordinal) || slug.StartsWith("scale", StringComparison.Ordinal) || slug.StartsWith("tongue-ways", StringComparison.Ordinal))
            .Should().BeEmpty();
    }

    [Fact]
    public void Who_had_stepped_out_is_left_out_of_that_pass()
    {
        var text = Rigs.Plain("load l\nrestoration 0 %") + """


            load l
                on vehicle
                    item driver 100 kg at 1.5 m behind front-axle

            weighing w
                rig r
                date 2026-05-02
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
                    absent item driver
            """;

        Study.Weighing(text).Passes[0].Reading("front")!.Value("model-load").Should().BeApproximately(1250, 1e-9);
        Study.Weighing(text.Replace("        absent item driver", "")).Passes[0].Reading("front")!.Value("model-load").Should().BeApproximately(1300, 1e-9);
    }

    [Fact]
    public void A_head_that_was_off_is_put_on_for_the_base_of_restoration()
    {
        var text = Weighed(Three.Replace("        scale rear 1150 kg\n    pass slack", "        scale rear 1150 kg\n        head off\n    pass slack")).Replace("mass 0 kg", "mass 40 kg");
        var weighing = Study.Weighing(text);

        // 40 kg at the ball take 16 kg off the front axle, so less of its loss is the trailer's.
        weighing.Value("restoration-weighed").Should().BeApproximately(60.0 / (1250 - 16 - 1130), 1e-9);
    }
}
