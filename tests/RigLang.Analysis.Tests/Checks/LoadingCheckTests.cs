namespace RigLang.Analysis.Tests.Checks;

public sealed class LoadingCheckTests
{
    private static string Loaded(string onVehicle, string onTrailer, string trailerLines = "") =>
        Rigs.Plain("couple 0 N·m\nload a").Replace("    brakes electric\n", $"    brakes electric\n{trailerLines}")
        + $"\n\nload a\n    on vehicle\n        item driver 80 kg at 1.4 m behind front-axle\n{onVehicle}    on trailer\n        item box 10 kg at axle\n{onTrailer}";

    [Theory]
    [InlineData("    aboard nothing\n")]
    [InlineData("    aboard\n        item gas 20 kg at coupling\n")]
    public void Said_to_be_empty_or_listed_is_an_answer(string aboard) =>
        Study.Slugs(Rigs.Plain("couple 0 N·m").Replace("    aboard nothing\n\nhitch", aboard + "\nhitch")).Should().NotContain("what-was-aboard");

    [Fact]
    public void Each_weighed_part_without_it_is_asked_about_once() =>
        Study.Findings(Rigs.Plain("couple 0 N·m").Replace("    aboard nothing\n", "")).Where(finding => finding.Check.Slug == "what-was-aboard").Select(finding => finding.Place.Text)
            .Should().Equal("carries 1250 kg", "mass 2500 kg");

    [Fact]
    public void A_level_without_its_tank_is_reported_at_the_rig_that_has_the_load()
    {
        var finding = Study.Findings(Loaded("", "        fill fresh 50 %\n")).Single(finding => finding.Check.Slug == "unknown-tank");

        finding.Place.Text.Should().Be("load a");
        finding.Message.Should().Be("`fill fresh` of load a: trailer t has no such tank. None is built in; a `tank` line says where one is.");
    }

    [Fact]
    public void A_level_under_aboard_is_reported_where_it_stands() =>
        Study.Findings(Rigs.Plain("couple 0 N·m").Replace("    aboard nothing\n\nhitch", "    tank grey 60 L water at axle\n    aboard\n        fill fresh 50 %\n\nhitch"))
            .Single(finding => finding.Check.Slug == "unknown-tank").Message.Should().Be("trailer t has no tank `fresh`. It has `grey`.");

    [Theory]
    [InlineData("60 L", false)]
    [InlineData("61 L", true)]
    [InlineData("100 %", false)]
    public void A_tank_holds_what_it_holds(string level, bool isOver) =>
        Study.Slugs(Loaded("", $"        fill fresh {level}\n", "    tank fresh 60 L water at axle\n")).Contains("overfilled-tank").Should().Be(isOver);

    [Theory]
    [InlineData("on vehicle", "item driver 80 kg at 1.4 m behind front-axle", true)]
    [InlineData("on trailer", "item driver 80 kg at axle", false)]
    [InlineData("on vehicle", "item partner 80 kg at 1.4 m behind front-axle", false)]
    public void The_same_item_in_two_loads_counts_twice_only_on_one_carrier(string on, string item, bool isDoubled) =>
        Study.Slugs((Loaded("", "") + $"\nload b\n    {on}\n        {item}\n").Replace("    load a\n", "    load a\n    load b\n")).Contains("doubled-item").Should().Be(isDoubled);

    [Theory]
    [InlineData("front-axel", "front-axle")]
    [InlineData("rear-axl", "rear-axle")]
    public void A_mistyped_point_of_a_vehicle_has_a_fix(string typed, string meant)
    {
        var finding = Study.Findings(Loaded($"        item bag 5 kg at 1 m behind {typed}\n", "")).Single(finding => finding.Check.Slug == "unknown-point");

        finding.Place.Text.Should().Be(typed);
        finding.Fixes.Should().ContainSingle().Which.Edits.Should().ContainSingle().Which.NewText.Should().Be(meant);
    }

    [Theory]
    [InlineData("only", false)]
    [InlineData("axle", false)]
    [InlineData("coupling", false)]
    [InlineData("lead", true)]
    public void An_axle_by_name_is_a_point_of_the_trailer_that_has_it(string point, bool isUnknown) =>
        Study.Slugs(Loaded("", $"        item bag 5 kg at 0.5 m behind {point}\n")).Contains("unknown-point").Should().Be(isUnknown);

    [Theory]
    [InlineData("item rack 5 kg at 1.4 m ahead of front-axle", "", null)]
    [InlineData("item rack 5 kg at 1.6 m ahead of front-axle", "", "1.6 m ahead of the front axle, where the vehicle is not")]
    [InlineData("item rack 5 kg at 70 in behind rear-axle", "", null)]
    [InlineData("item rack 5 kg at 400 in behind rear-axle", "", "518 in behind the front axle, where the vehicle is not")]
    [InlineData("", "item bikes 5 kg at 5.9 m behind axle", null)]
    [InlineData("", "item bikes 5 kg at 6.1 m behind axle", "11.1 m behind the coupling, where the trailer is not")]
    public void An_item_can_not_lie_far_outside(string onVehicle, string onTrailer, string? message)
    {
        var findings = Study.Findings(Loaded(onVehicle.Length == 0 ? "" : $"        {onVehicle}\n", onTrailer.Length == 0 ? "" : $"        {onTrailer}\n"))
            .Where(finding => finding.Check.Slug == "item-out-of-reach").Select(finding => finding.Message).ToList();

        if (message is null)
        {
            findings.Should().BeEmpty();
        }
        else
        {
            findings.Should().ContainSingle().Which.Should().Contain(message);
        }
    }

    [Theory]
    [InlineData("mass 2400 kg", false)]
    [InlineData("mass 2411 kg", false)]
    [InlineData("mass 2420 kg", true)]
    [InlineData("mass 2420 kg ± 20 kg", false)]
    public void Mass_and_axles_agree_within_a_half_per_cent_or_what_is_said(string mass, bool isReported) =>
        Study.Slugs(Rigs.Plain("couple 0 N·m").Replace("    ball-height", $"    {mass}\n    ball-height")).Contains("mass-and-carries-disagree").Should().Be(isReported);

    [Theory]
    // 49 CFR 571.110 S9.2: axle ratings and tongue together at least the gross rating. 2600 + 300 kg against it.
    [InlineData("2900 kg", false)]
    [InlineData("2901 kg", true)]
    public void Axles_and_tongue_reach_the_gross_rating(string gross, bool isReported) =>
        Study.Slugs(Rigs.Plain("couple 0 N·m").Replace("gross-rating 2700 kg", $"gross-rating {gross}")).Contains("axles-below-gross").Should().Be(isReported);
}
