using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Checks;

/// <summary>What the repository's own examples show: nothing wrong, save in the one that is there to be wrong.</summary>
public sealed class ExampleFindingsTests
{
    private static readonly string Overloaded = Example.All.Single(text => text.Contains("rig too-much", StringComparison.Ordinal));

    [Fact]
    public void Good_examples_have_neither_errors_nor_warnings_of_masses_hitch_tyres_and_handling() =>
        Example.All.Where(text => text != Overloaded).SelectMany(text => Study.Findings(text))
            .Where(finding => finding.Severity != Severity.Note && finding.Check.Family is (CheckFamily.Masses or CheckFamily.Hitch or CheckFamily.Tyres or CheckFamily.Handling))
            .Select(finding => finding.Message).Should().BeEmpty();

    [Theory]
    [InlineData("axle-over-rating")]
    [InlineData("vehicle-over-gross")]
    [InlineData("train-over-combined")]
    [InlineData("trailer-over-gross")]
    [InlineData("trailer-over-towing-rating")]
    [InlineData("tongue-over-rating")]
    [InlineData("roof-over-rating")]
    [InlineData("d-value-too-small")]
    [InlineData("no-sway-device")]
    [InlineData("pressure-too-low")]
    [InlineData("tongue-above-usual")]
    [InlineData("trailer-heavy")]
    [InlineData("ball-off-level")]
    [InlineData("speed-over-law")]
    public void The_overloaded_one_shows_it(string slug) => Study.Slugs(Overloaded).Should().Contain(slug);
}
