using RigLang.Analysis.Results.Ratings;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tests.Ratings;

public sealed class RatingTableTests
{
    [Fact]
    public void Room_is_rating_less_load()
    {
        var lines = RatingTable.Of(Study.Rig(Rigs.Plain("restoration 100 %")));

        // Loads of the reference rig, computed by two independent formulations, against the plates written in its text.
        Line(lines, "Axle front").Room.Should().BeApproximately(1400 - 1250, 1e-6);
        Line(lines, "Axle rear").Room.Should().BeApproximately(1700 - 1391.935, 5e-4);
        Line(lines, "Vehicle, gross").Room.Should().BeApproximately(3000 - 2641.935, 5e-4);
        Line(lines, "Vehicle and trailer").Room.Should().BeApproximately(5500 - 4900, 1e-6);
        Line(lines, "Trailer axle only").Room.Should().BeApproximately(2600 - 2258.065, 5e-4);
        Line(lines, "Tongue, by the vehicle").Room.Should().BeApproximately(350 - 300, 1e-6, "plates limit what the trailer brings, not the net load at the ball");
        Line(lines, "Towing, by the hitch").Use.Should().BeApproximately(2500.0 / 3500, 1e-9);
        lines.Should().NotContain(line => line.IsOver);
    }

    [Fact]
    public void The_least_room_comes_first_and_the_unknown_last()
    {
        var lines = RatingTable.Of(Study.Rig(Rigs.Plain("speed 80 km/h")));

        lines.Where(line => line.IsKnown).Select(line => line.Use).Should().BeInDescendingOrder();
        lines.SkipWhile(line => line.IsKnown).Should().NotBeEmpty("without restoration the axle loads are not known").And.OnlyContain(line => !line.IsKnown);
    }

    [Fact]
    public void Rating_use_is_the_worst_of_the_table()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 100 %"));

        rig.Value("rating-use").Should().BeApproximately(2500.0 / 2700, 1e-9, "the trailer's gross rating is the tightest");
        rig.Value("rating-use").Should().BeApproximately(RatingTable.Of(rig).First(line => line.Rating.CountsInUse).Use, 1e-12);
    }

    [Theory]
    [InlineData("electric", "weight-distributing", "towing-rating", "tongue-rating")]
    [InlineData("electric", "weight-carrying", "towing-rating-carrying", "tongue-rating-carrying")]
    [InlineData("none", "weight-distributing", "towing-rating-unbraked", "tongue-rating")]
    [InlineData("none", "weight-carrying", "towing-rating-unbraked", "tongue-rating-carrying")]
    public void What_is_driven_decides_which_rating_counts(string brakes, string type, string towing, string tongue)
    {
        var text = Rigs.Plain("couple 0 N·m").Replace("brakes electric", $"brakes {brakes}").Replace("type weight-distributing", $"type {type}")
            .Replace("    tongue-rating 350 kg", "    tongue-rating 350 kg\n    towing-rating-carrying 2800 kg\n    tongue-rating-carrying 320 kg\n    towing-rating-unbraked 2600 kg");
        var lines = RatingTable.Of(Study.Rig(text));

        Line(lines, "Towing, by the vehicle").Rating.Limit.Keyword.Should().Be(towing);
        Line(lines, "Tongue, by the vehicle").Rating.Limit.Keyword.Should().Be(tongue);
    }

    [Theory]
    [InlineData("brakes electric", "brakes none", "towing-rating-unbraked")]
    [InlineData("    overhang 1.20 m", "    pin-overhang 1.00 m", "towing-rating-carrying")]
    [InlineData("    tongue-rating 350 kg", "    tongue-rating 350 kg\n    tongue-rating-carrying 320 kg", "towing-rating-carrying")]
    public void The_higher_rating_never_stands_in_for_one_that_nobody_wrote(string was, string now, string asked)
    {
        var text = Rigs.Plain("speed 80 km/h").Replace("type weight-distributing", "type weight-carrying").Replace("    bar-length", "    reach 0.20 m\n    bar-length").Replace(was, now);
        var line = Line(RatingTable.Of(Study.Rig(text)), "Towing, by the vehicle");

        line.Rating.Limit.Keyword.Should().Be(asked);
        line.IsKnown.Should().BeFalse();
        line.Room.Should().Be(double.NaN);
    }

    [Fact]
    public void The_higher_rating_is_told_of_when_even_that_is_passed()
    {
        var text = Rigs.Plain("speed 80 km/h").Replace("brakes electric", "brakes none").Replace("    towing-rating 3000 kg", "    towing-rating 2400 kg");
        var lines = RatingTable.Of(Study.Rig(text)).Where(line => line.Rating.Title == "Towing, by the vehicle").ToList();

        lines.Should().ContainSingle(line => line.IsOver).Which.Rating.Limit.Keyword.Should().Be("towing-rating");
        lines.Should().ContainSingle(line => !line.IsKnown).Which.Rating.Limit.Keyword.Should().Be("towing-rating-unbraked");
        Study.Rig(text).Value("rating-use").Should().BeApproximately(2500.0 / 2400, 1e-9);
    }

    [Fact]
    public void A_vehicle_with_a_ball_of_its_own_has_one_towing_rating()
    {
        var text = Rigs.Plain("speed 80 km/h").Replace("    hitch bars", "");

        Line(RatingTable.Of(Study.Rig(text)), "Towing, by the vehicle").Room.Should().BeApproximately(500, 1e-9);
    }

    [Fact]
    public void Tyres_have_lines_of_their_own_with_the_limit_that_pressure_leaves()
    {
        var text = Rigs.Plain("couple 0 N·m").Replace("        axle-rating 2600 kg", "        axle-rating 5732 lb\n        tyres 225/75R16C 121/120R\n        pressure 400 kPa\n        rated-pressure 500 kPa");
        var line = Line(RatingTable.Of(Study.Rig(text)), "Trailer axle only, each tyre");

        // Load index 121 is 1450 kg; (400 / 500)^0.8 of it; half of 2200 kg on it.
        line.Limit!.Value.Should().BeApproximately(1450 * Math.Pow(0.8, 0.8), 1e-6);
        line.Limit.Unit.Symbol.Should().Be("lb", "the axle's own rating is in pounds");
        line.Load.Value.Should().BeApproximately(1100, 1e-9);
        line.LimitLine!.Declaration.Keyword.Should().Be("tyres");
        line.IsEstimated.Should().BeFalse();
    }

    [Theory]
    // UN R55: D = 9.81 · T · R / (T + R); formula from memory, values computed.
    [InlineData(2000, 1500, 8409)]
    [InlineData(2500, 2500, 12263)]
    [InlineData(2600, 3500, 14635)]
    public void The_d_value_needed_follows_from_the_papers(double vehicle, double trailer, double needed)
    {
        var text = Rigs.Plain("couple 0 N·m").Replace("gross-rating 3000 kg", $"gross-rating {vehicle} kg").Replace("gross-rating 2700 kg", $"gross-rating {trailer} kg");

        Study.Rig(text).Value("d-needed").Should().BeApproximately(needed, 0.5);
    }

    [Fact]
    public void Each_d_value_is_held_against_the_one_needed()
    {
        var text = Rigs.Plain("couple 0 N·m").Replace("    coupling-height 0.45 m", "    coupling-height 0.45 m\n    d-value 13 kN").Replace("    mass 0 kg", "    mass 0 kg\n    d-value 15 kN");
        var lines = RatingTable.Of(Study.Rig(text));

        // 9.81 · 3.0 · 2.7 / 5.7 = 13.94 kN
        Line(lines, "D-value, by the coupling").IsOver.Should().BeTrue();
        Line(lines, "D-value, by the hitch").IsOver.Should().BeFalse();
        lines.Should().NotContain(line => line.Rating.Title == "D-value, by the vehicle", "its plate isn't written");
        Study.Rig(text).Value("rating-use").Should().BeLessThan(1, "a D-value holds for the papers' masses, not for what is loaded");
    }

    [Fact]
    public void A_solo_rig_has_no_trailers_ratings() =>
        RatingTable.Of(Study.Rig(Rigs.Plain("speed 80 km/h").Replace("    trailer t\n", "").Replace("    hitch bars", "")))
            .Select(line => line.Rating.Family).Should().OnlyContain(family => family == RatingFamily.Axle || family == RatingFamily.Gross);

    [Fact]
    public void Every_rating_that_the_verdict_wants_is_listed_until_it_is_written() =>
        RatingTable.Of(Study.Rig(Rigs.Plain("restoration 50 %").Replace("    combined-rating 5500 kg\n", "")))
            .Should().ContainSingle(line => !line.IsKnown).Which.Rating.Limit.Need.Should().Be(Need.ForVerdict);

    private static RatingLine Line(IEnumerable<RatingLine> lines, string title) => lines.First(line => line.Rating.Title == title);
}
