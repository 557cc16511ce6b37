namespace RigLang.Analysis.Tests.Ratings;

public sealed class RoomLeftTests
{
    private const string Load = """


        load l
            on vehicle
                item driver 80 kg at 1.5 m behind front-axle
            on trailer
                item stove 50 kg at axle
        """;

    [Fact]
    public void Payload_left_is_the_less_of_gross_rating_and_placard()
    {
        var byGross = Study.Rig(Rigs.Plain("couple 0 N·m\nload l") + Load);
        byGross.Value("payload-left").Should().BeApproximately(3000 - (2400 + 80 + 300), 1e-6);

        var byPlacard = Study.Rig((Rigs.Plain("couple 0 N·m\nload l") + Load).Replace("    tongue-rating 350 kg", "    tongue-rating 350 kg\n    cargo-rating 500 kg").Replace("    mass 0 kg", "    mass 30 kg"));
        byPlacard.Value("cargo-load").Should().BeApproximately(80 + 30 + 300, 1e-6, "the hitch and the tongue count as cargo");
        byPlacard.Value("payload-left").Should().BeApproximately(500 - 410, 1e-6);
    }

    [Fact]
    public void The_trailer_may_take_what_gross_rating_and_placard_leave()
    {
        var text = Rigs.Plain("couple 0 N·m\nload l") + Load;

        Study.Rig(text).Value("trailer-cargo-left").Should().BeApproximately(2700 - 2550, 1e-6);
        Study.Rig(text.Replace("    brakes electric", "    brakes electric\n    cargo-rating 120 kg")).Value("trailer-cargo-left").Should().BeApproximately(120 - 50, 1e-6);
    }

    [Fact]
    public void Restoration_is_told_from_both_bases()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 50 %").Replace("    mass 0 kg", "    mass 40 kg"));

        // By hand: the head takes 40 · 1.2 / 3 = 16 kg off the front, the slack trailer 120 kg more, the bars give 60 kg back.
        rig.Value("front-axle-solo").Should().BeApproximately(1234, 1e-6);
        rig.Value("restored-share").Should().BeApproximately(0.5, 1e-9);
        rig.Value("restored-share-head-off").Should().BeApproximately(60.0 / 136, 1e-9);
    }

    [Fact]
    public void The_ball_holds_the_bars_down_besides_the_net_load()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 100 %"));

        // Net 2372.6 N and 2847.1 N·m over 0.75 m, from the reference rig.
        rig.Value("ball-force").Should().BeApproximately(2372.6 + (2847.1 / 0.75), 0.2);
    }

    [Fact]
    public void Bars_without_a_rating_are_judged_by_the_hitch_and_that_is_marked()
    {
        var node = Study.Rig(Rigs.Plain("couple 0 N·m")).Result("bar-use");
        node.Value.Should().BeApproximately(300.0 / 400, 1e-9);
        node.IsEstimated.Should().BeTrue();

        var written = Study.Rig(Rigs.Plain("couple 0 N·m").Replace("    bar-length", "    bar-rating 250 kg\n    bar-length")).Result("bar-use");
        written.Value.Should().BeApproximately(300.0 / 250, 1e-9);
        written.IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void The_trailer_is_compared_with_the_papers_mass_where_it_is_said()
    {
        Study.Rig(Rigs.Plain("couple 0 N·m")).Result("kerb-share").Missing!.Fact.Keyword.Should().Be("kerb-mass");
        Study.Rig(Rigs.Plain("couple 0 N·m").Replace("    overhang 1.20 m", "    overhang 1.20 m\n    kerb-mass 2000 kg")).Value("kerb-share").Should().BeApproximately(1.25, 1e-9);
    }
}
