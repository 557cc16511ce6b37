using RigLang.Analysis.Checks.Handling;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Checks;

/// <summary>A practice's limits warn, by the check that speaks for the result and side, and only rigs that name the practice.</summary>
public sealed class PracticeCheckTests
{
    private static string Under(string limits, string rigLines = "couple 0 N·m") =>
        Rigs.Plain(rigLines + "\npractice ours") + $"\n\npractice ours \"House rules\"\n{string.Concat(limits.Split('\n').Select(line => $"    limit {line}\n"))}";

    [Theory]
    // The reference rig: 300 of 2500 kg on the tongue, 1.20 m behind a wheelbase of 3.00 m, front axle from 1250 to 1130 kg.
    [InlineData("tongue-ratio 13 % .. 15 %", "tongue-below-usual", "Of the loaded trailer the tongue takes 12 %; practice ours limits it to 13 % .. 15 %.")]
    [InlineData("tongue-ratio 5 % .. 10 %", "tongue-above-usual", "Of the loaded trailer the tongue takes 12 %; practice ours limits it to 5 % .. 10 %.")]
    [InlineData("overhang-ratio < 35 %", "overhang-long", "From rear axle to ball it is, as a share of the wheelbase, 40 %; practice ours limits it to < 35 %.")]
    [InlineData("trailer-share <= 100 %", "trailer-heavy", "Against the loaded vehicle the trailer weighs 104 %; practice ours limits it to <= 100 %.")]
    [InlineData("front-axle-change > -5 %", "front-axle-light", "Against solo the front axle changes by -9.6 %; practice ours limits it to > -5 %.")]
    [InlineData("rating-use < 90 %", "near-rating", "The most used rating is used up to 93 %; practice ours limits it to < 90 %.")]
    [InlineData("train-load < 4800 kg", "outside-practice", "`train-load` is 4900 kg; practice ours limits it to < 4800 kg.")]
    [InlineData("overhang-ratio > 45 %", "outside-practice", "`overhang-ratio` is 40 %; practice ours limits it to > 45 %.")]
    [InlineData("axle-use < 80 %", "outside-practice", "`axle-use` of vehicle axle front is 81 %; practice ours limits it to < 80 %.")]
    public void Each_result_and_side_has_its_check(string limit, string slug, string message)
    {
        var findings = Study.Findings(Under(limit)).Where(finding => finding.Check.Slug == slug).ToList();

        findings.Should().Contain(finding => finding.Message.StartsWith(message)).And.OnlyContain(finding => finding.Severity == Severity.Warning);
        findings[0].Related.Should().ContainSingle().Which.Place.Text.Should().Be("limit " + limit);
    }

    [Fact]
    public void A_limit_speaks_through_one_check_only()
    {
        var own = HandlingChecks.OfPractice.Select(check => check.Declaration.Slug).Append("outside-practice").ToList();

        Study.Slugs(Under("tongue-ratio 13 % .. 15 %")).Where(own.Contains).Should().Equal("tongue-below-usual");
    }

    [Fact]
    public void A_rig_that_names_no_practice_is_held_to_none() =>
        Study.Slugs(Under("tongue-ratio 13 % .. 15 %").Replace("    practice ours\n\n", "\n")).Should().NotContain("tongue-below-usual");

    [Theory]
    [InlineData("tongue-ratio 12 % .. 15 %")]
    [InlineData("tongue-ratio 10 % .. 12 %")]
    [InlineData("tongue-ratio = 12 %")]
    public void On_the_limit_is_within_it(string limit) => Study.Slugs(Under(limit)).Should().NotContain("tongue-below-usual").And.NotContain("tongue-above-usual");

    [Fact]
    public void What_is_not_known_misses_no_limit() =>
        Study.Slugs(Under("kerb-share < 50 %\ndamping > 0.9 at 100 km/h").Replace("    wheelbase 3.00 m\n", "")).Should().NotContain("trailer-heavy").And.NotContain("damping-low");

    [Fact]
    public void Common_practice_has_no_file_to_open()
    {
        var finding = Study.Findings(Rigs.Plain("couple 0 N·m\npractice common-eu")).Single(finding => finding.Check.Slug == "tongue-above-usual");

        finding.Message.Should().Contain("common practice (common-eu) limits it to 4 % .. 7 %.");
        finding.Related.Should().BeEmpty();
    }

    [Fact]
    public void A_limit_is_accepted_by_the_checks_own_name()
    {
        var text = Under("tongue-ratio 13 % .. 15 %").Replace("    practice ours\n", "    practice ours\n    allow tongue-below-usual because \"the maker asks for 12 %\"\n");

        Study.Slugs(text).Should().NotContain("tongue-below-usual").And.NotContain("allows-nothing");
    }

    [Fact]
    public void A_house_limit_holds_for_the_rigs_trips()
    {
        var text = Under("leg-time < 10 min") + "\n\ntrip out\n    rig r\n    start home\n    leg coast\n        distance 20 km\n        climb 0 m\n        speed 80 km/h\n";

        Study.Findings(text).Single(finding => finding.Check.Slug == "outside-practice").Message.Should().StartWith("`leg-time` of leg coast is 15 min; practice ours limits it to < 10 min.");
    }
}
