namespace RigLang.Analysis.Tests.Checks;

/// <summary>Messages and places of the checks against ratings; the loads themselves are tested with the results.</summary>
public sealed class RatingCheckTests
{
    private static readonly string Level = Rigs.Plain("couple 0 N·m");

    [Theory]
    // With slack bars the reference rig carries 1130 and 1570 kg, its trailer's axle 2200 kg; the trailer weighs 2500, all together 4900 kg.
    [InlineData("axle-rating 1700 kg", "axle-rating 1500 kg", "axle-over-rating", "Axle rear carries 1570 kg, 70 kg over its `axle-rating` of 1500 kg.", "vehicle v")]
    [InlineData("axle-rating 2600 kg", "axle-rating 4800 lb", "axle-over-rating", "Trailer axle only carries 4850 lb, 50 lb over its `axle-rating` of 4800 lb.", "trailer t")]
    [InlineData("gross-rating 3000 kg", "gross-rating 2690 kg", "vehicle-over-gross", "The vehicle stands on its wheels with 2700 kg, 10 kg over the vehicle's `gross-rating` of 2690 kg.", "vehicle v")]
    [InlineData("combined-rating 5500 kg", "combined-rating 4.85 t", "train-over-combined", "Vehicle and trailer weigh 4.90 t, 0.05 t over the vehicle's `combined-rating` of 4.85 t.", "trailer t")]
    [InlineData("gross-rating 2700 kg", "gross-rating 2499 kg", "trailer-over-gross", "The loaded trailer weighs 2500 kg, 1 kg over the trailer's `gross-rating` of 2499 kg.", "trailer t")]
    [InlineData("towing-rating 3000 kg", "towing-rating 2400 kg", "trailer-over-towing-rating", "The loaded trailer weighs 2500 kg, 100 kg over the vehicle's `towing-rating` of 2400 kg.", "trailer t")]
    [InlineData("towing-rating 3500 kg", "towing-rating 2400 kg", "trailer-over-towing-rating", "The loaded trailer weighs 2500 kg, 100 kg over the hitch's `towing-rating` of 2400 kg.", "hitch bars")]
    [InlineData("tongue-rating 400 kg", "tongue-rating 250 kg", "tongue-over-rating", "The tongue load is 300 kg, 50 kg over the hitch's `tongue-rating` of 250 kg.", "hitch bars")]
    public void It_says_what_is_over_which_plate_by_how_much(string was, string now, string slug, string message, string line)
    {
        var finding = Study.Findings(Level.Replace(was, now)).Single(finding => finding.Check.Slug == slug);

        finding.Message.Should().StartWith(message);
        finding.Place.Text.Should().Be(line);
        finding.Related.Should().ContainSingle().Which.Place.Text.Should().Be(now);
    }

    [Fact]
    public void Just_at_the_rating_is_not_over_it() =>
        Study.Slugs(Level.Replace("gross-rating 2700 kg", "gross-rating 2500 kg").Replace("combined-rating 5500 kg", "combined-rating 4900 kg"))
            .Should().NotContain("trailer-over-gross").And.NotContain("train-over-combined");

    [Fact]
    public void A_load_that_rests_on_an_estimate_says_so()
    {
        var text = Level.Replace("    aboard nothing\n\nhitch", "\nhitch").Replace("gross-rating 2700 kg", "gross-rating 2400 kg") + "\n    load some\n\nload some\n    on trailer\n        item box 10 kg at axle\n";

        Study.Findings(text).Single(finding => finding.Check.Slug == "trailer-over-gross").Message.Should().StartWith("The loaded trailer weighs 2510 kg (estimated), 110 kg over");
    }

    [Fact]
    public void No_practice_loosens_a_rating()
    {
        var text = Level.Replace("gross-rating 2700 kg", "gross-rating 2400 kg") + "\n    practice ours\n\npractice ours\n    limit rating-use < 150 %\n    limit trailer-load < 3000 kg\n";

        Study.Slugs(text).Should().Contain("trailer-over-gross");
    }

    [Fact]
    public void A_rig_like_another_shows_its_own_overload_at_its_name()
    {
        var text = Level + "\n    load light\n\nload light\n    on trailer\n        item box 10 kg at axle\n\nload heavy\n    on trailer\n        item stone 300 kg at axle\n\nrig more like r\n    without load light\n    load heavy\n";

        var finding = Study.Findings(text).Single(finding => finding.Check.Slug == "trailer-over-gross");
        finding.Place.Text.Should().Be("more");
    }

    [Fact]
    public void An_inherited_expectation_that_fails_is_told_of_in_the_file_that_inherits_it()
    {
        var analysis = Study.Of(
            "use \"b.rig\"\n\nrig more like r\n    load heavy\n\nload heavy\n    on trailer\n        item stone 150 kg at axle\n",
            ("b.rig", Level + "\n    expect trailer-load < 2600 kg\n"));

        var finding = analysis.Findings(Study.File).Remaining.Single(finding => finding.Check.Slug == "expectation-missed");
        finding.Place.Text.Should().Be("more");
        finding.Related.Should().ContainSingle().Which.Place.File.Path.Should().EndWith("b.rig");
    }

    [Fact]
    public void What_the_verdict_wants_is_listed_once_for_each_part()
    {
        var text = Level.Replace("    combined-rating 5500 kg\n", "").Replace("        axle-rating 1700 kg\n", "").Replace("    tongue-rating 400 kg\n", "") + "\n\nrig more like r\n    couple 10 N·m\n";

        Study.Findings(text).Where(finding => finding.Check.Slug == "ratings-missing").Select(finding => finding.Message).Should().Equal(
            "Not yet said of vehicle v: `combined-rating`, `axle-rating` of axle rear. Until then the verdict stays open.",
            "Not yet said of hitch bars: `tongue-rating`. Until then the verdict stays open.");
    }

    [Fact]
    public void A_rig_without_a_trailer_is_not_asked_about_towing()
    {
        var text = Level.Replace("    trailer t\n", "").Replace("    hitch bars\n", "").Replace("    couple 0 N·m", "").Replace("    combined-rating 5500 kg\n", "").Replace("    towing-rating 3000 kg\n", "");

        Study.Slugs(text).Should().NotContain("ratings-missing");
    }

    [Theory]
    [InlineData("tongue-least 299 kg", false)]
    [InlineData("tongue-least 301 kg", true)]
    public void A_maker_may_ask_for_a_least_tongue_load(string least, bool isReported) =>
        Study.Slugs(Level.Replace("    coupling-height 0.45 m\n", $"    coupling-height 0.45 m\n    {least}\n")).Contains("tongue-below-least").Should().Be(isReported);
}
