namespace RigLang.Analysis.Tests.Checks;

/// <summary>An expectation that nobody would look at is reported, and one in a weighing is looked at.</summary>
public sealed class ExpectationPlaceTests
{
    [Theory]
    [InlineData("expect energy-left > 20 %")]
    [InlineData("expect axle-load < 1400 kg")]
    [InlineData("expect tongue-weighed < 200 kg")]
    public void A_rig_judges_a_rigs_results_only(string line) => Study.Slugs(Rigs.Plain("couple 0 N·m\n" + line)).Should().Contain("never-judged");

    [Fact]
    public void A_practice_may_limit_what_is_of_an_axle_or_a_trip() =>
        Study.Slugs("practice ours\n    limit axle-use < 90 %\n    limit energy-left > 15 %\n").Should().NotContain("never-judged");

    [Theory]
    [InlineData("assume wheelbase 3 m", "`wheelbase` has no estimate to stand in place of: write it where it belongs.")]
    [InlineData("assume frictoin 0.65", "Nothing that can be assumed is called `frictoin`. Did you mean `friction`?")]
    [InlineData("assume friction 0.65 kg", "`friction` is of the kind ratio: this is no value of it, so nothing is assumed.")]
    public void An_assumption_that_does_nothing_is_an_error(string line, string message) =>
        Study.Findings($"practice ours\n    {line}\n").Should().ContainSingle(finding => finding.Check.Slug == "unknown-assumption").Which.Message.Should().Be(message);

    [Theory]
    [InlineData("< 280 kg", true)]
    [InlineData("< 300 kg", false)]
    public void A_weighings_own_expectation_is_judged(string bound, bool isMissed)
    {
        var text = Rigs.Plain("couple 0 N·m") + $"""


            weighing w
                rig r
                date 2026-05-02
                expect tongue-weighed {bound}
                pass trailer
                    scale tongue 290 kg
            """;

        Study.Slugs(text).Contains("expectation-missed").Should().Be(isMissed);
    }
}
