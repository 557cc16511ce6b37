using RigLang.Analysis.Checks;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Checks;

/// <summary>One slip of the pen is one error: what only follows from it waits until it is mended.</summary>
public sealed class OneSlipTests
{
    private static readonly string Pair = Allowances.AllowsNothing.Good;

    [Fact]
    public void A_vehicle_misspelt_in_the_rig_is_neither_unused_nor_without_its_axles()
    {
        var text = Pair.Replace("    vehicle van\n", "    vehicle vam\n") + "\n\nweighing w\n    rig pair\n    date 2026-05-02\n    pass solo\n        scale front 1250 kg";

        Study.Slugs(text).Should().Contain("name-unknown").And.NotContain("scaled-axle-unknown").And.NotContain("unused-declaration");
    }

    [Fact]
    public void An_axle_misspelt_in_the_vehicle_may_be_the_one_on_the_scale()
    {
        var text = Pair.Replace("    axle rear\n", "    axle back\n") + "\n\nweighing w\n    rig pair\n    date 2026-05-02\n    pass solo\n        scale rear 1250 kg";

        Study.Slugs(text).Should().Contain("wrong-form").And.NotContain("scaled-axle-unknown");
    }

    [Fact]
    public void A_departure_that_cannot_be_read_is_not_said_to_be_missing()
    {
        var text = Pair + "\n\ntrip t\n    rig pair\n    start home\n    depart 06.06.2026 6:30\n    leg a\n        distance 10 km\n    stop a\n        until 2026-06-06 17:00";

        Study.Slugs(text).Should().Contain("date-unreadable").And.NotContain("clock-unclear");
    }

    [Fact]
    public void A_part_that_no_rig_names_is_still_told() => Study.Slugs(Pair + "\n\nload july\n    on vehicle\n        item dog 20 kg at 2 m behind front-axle").Should().Contain("unused-declaration");

    private static readonly string Weighed = Pair + "\n\nweighing w\n    rig pair\n    date 2026-05-02\n    pass solo\n        scale front 1250 kg\n        scale rear 1150 kg";

    [Theory]
    [InlineData("    wheelbase 3.00 m", "    wheelbase 300 m", "magnitude-unlikely")]
    [InlineData("        item people 150 kg", "        itm people 150 kg", "unknown-keyword")]
    [InlineData("        item people 150 kg at 1.40 m", "        item people 150 at 1.40 m", "unit-missing")]
    [InlineData("    load us", "    laod us", "unknown-keyword")]
    public void A_slip_in_a_part_does_not_put_the_scale_in_the_wrong(string line, string typed, string slug)
    {
        Study.Slugs(Weighed).Should().Contain("scale-off-model");
        Study.Slugs(Weighed.Replace(line, typed)).Should().Contain(slug).And.NotContain(["scale-off-model", "ratings-missing", "unused-declaration"]);
    }

    [Fact]
    public void A_rig_without_its_name_is_not_unknown_as_well() =>
        Study.Slugs(Weighed.Replace("rig pair\n    vehicle", "rig\n    vehicle")).Should().Contain("opening-without-name").And.NotContain("name-unknown");

    [Fact]
    public void A_misspelt_kind_is_read_as_the_one_that_is_meant() =>
        Study.Slugs(Weighed.Replace("trailer box\n    mass", "trialer box\n    mass")).Should().Contain("unknown-kind").And.NotContain("name-unknown");

    [Fact]
    public void A_part_of_another_kind_is_said_to_be_that() =>
        Study.Findings(Pair.Replace("    vehicle van\n", "    vehicle box\n")).Single(finding => finding.Check.Slug == "name-unknown").Message.Should().EndWith("`box` is a trailer.");

    [Fact]
    public void A_line_of_the_rig_without_its_indent_is_one_finding() =>
        Study.Findings(Pair.Replace("    trailer box\n    load", "trailer box\n    load")).Where(finding => finding.Severity == Severity.Error).Select(finding => finding.Check.Slug)
            .Should().Equal("name-taken");

    private static readonly string Travelling = Pair + "\n\ntrip t\n    rig pair\n    start home\n    leg a\n        climb 0 m\n        expect leg-time < 3 h";

    [Fact]
    public void An_expectation_that_cannot_be_tested_is_told_with_what_it_needs() =>
        Study.Findings(Travelling).Single(finding => finding.Check.Slug == "expectation-untested").Message.Should().Contain("so nothing is tested here: it needs `distance` of leg a");

    [Theory]
    [InlineData("    rig pair\n    start", "    start", "names-no-rig")]
    [InlineData("    rig pair\n    start", "    rig pai\n    start", "name-unknown")]
    [InlineData("    vehicle van\n", "    vehicle vam\n", "name-unknown")]
    [InlineData("        climb 0 m", "        climb 0 kg", "unit-of-something-else")]
    public void But_not_beside_the_slip_that_it_follows_from(string line, string typed, string slug) =>
        Study.Slugs(Travelling.Replace(line, typed)).Should().Contain(slug).And.NotContain("expectation-untested");

    [Theory]
    [InlineData("6 .. 12 %", "`6` has no unit and `12 %` has one, so nothing is tested here. Write `6 %`.")]
    [InlineData("6..12%", "`6` has no unit and `12%` has one, so nothing is tested here. Write `6 %`.")]
    public void The_unit_of_a_range_stands_at_both_ends(string range, string message) =>
        Study.Findings(Pair + $"\n    expect tongue-ratio {range}").Where(finding => finding.Severity == Severity.Error).Select(finding => finding.Message).Should().Equal(message);
}
