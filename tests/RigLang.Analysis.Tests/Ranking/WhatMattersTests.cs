using RigLang.Analysis.Ranking;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tests.Trips;
using RigLang.Quantities;

namespace RigLang.Analysis.Tests.Ranking;

/// <summary>Against moments worked out by hand, and against files in which the step is written.</summary>
public sealed class WhatMattersTests
{
    private const string Box = "load day\n    on vehicle\n        item box 60 kg at 2.40 m behind front-axle\n\nrig r";

    private static RigStudy Rig(string item = "") =>
        Study.Rig(Rigs.Plain("restoration 0 %\nload day").Replace("rig r", item.Length == 0 ? Box : Box.Replace("item box 60 kg at 2.40 m", item, StringComparison.Ordinal), StringComparison.Ordinal));

    private static Move[] Moves(Asked subject, string result, DisplaySystem system = DisplaySystem.Metric) => [.. WhatMatters.Of(Catalogue.FindResult(result)!, subject.Subject, system)];

    [Fact]
    public void Each_step_does_what_the_lever_says()
    {
        var moves = Moves(new(Rig()), "rear-axle-load");

        // 60 kg moved 0.5 m of a wheelbase of 3.00 m: 10 kg. 10 kg more at 2.40 m: 8 kg.
        moves.Where(move => move.Fact.Fact.Title != "restoration").Select(move => (move.Fact.Fact.Title, Math.Round(move.Step, 9), Math.Round(move.Difference, 6)))
            .Should().Equal(("item box, place", 0.5, 10), ("item box, mass", 10, 8));
    }

    [Fact]
    public void The_way_is_the_one_that_makes_the_result_more() =>
        Moves(new(Rig()), "front-axle-load").Single(move => move.Fact.Fact.Title == "item box, place").Should().Match<Move>(move => move.Step == -0.5 && Math.Abs(move.Difference - 10) < 1e-6);

    [Fact]
    public void Customary_units_have_round_steps_of_their_own() =>
        Moves(new(Rig()), "rear-axle-load", DisplaySystem.Us).Single(move => move.Fact.Fact.Title == "item box, place").Difference.Should().BeApproximately(60 * 0.6096 / 3, 1e-6);

    [Fact]
    public void What_is_as_it_is_is_not_listed() => Moves(new(Rig()), "rear-axle-load").Should().NotContain(move => move.Fact.Fact.Title == "wheelbase");

    [Fact]
    public void A_step_below_nothing_is_not_taken()
    {
        var moves = Moves(new(Rig("item box 8 kg at 2.40 m")), "rear-axle-load");

        moves.Should().Contain(move => move.Fact.Fact.Title == "item box, mass" && move.Step == 10);
        Moves(new(Rig("item box 8 kg at 0.00 m")), "front-axle-load").Should().NotContain(move => move.Step == -10);
    }

    [Fact]
    public void A_leg_slower_leaves_what_a_file_with_that_speed_leaves()
    {
        const string Lines = "start-charge 90 %\nreserve 5 %\nair 15 °C\nleg a\n    distance 60 km\n    climb 0 m\n    speed ";
        var leg = Journey.Of(Journey.Electric, Lines + "90 km/h").Legs[0];

        var slower = Moves(new(leg), "energy-left").Single(move => move.Fact.Fact.Title == "speed");

        slower.Step.Should().BeApproximately(-5 / 3.6, 1e-9);
        slower.Difference.Should().BeApproximately(Journey.Of(Journey.Electric, Lines + "85 km/h").Legs[0].Value("energy-left") - leg.Value("energy-left"), 1e-9);
        Moves(new(leg), "energy-left").Select(move => move.Fact.Fact.Title).Should().Contain("start-charge");
    }

    [Fact]
    public void A_result_that_is_not_computed_has_nothing_to_rank() => Moves(new(Study.Rig("rig r\n    vehicle v\n")), "rear-axle-load").Should().BeEmpty();

    private sealed record Asked(RigLang.Analysis.Tracking.ISubject Subject);
}
