using RigLang.Analysis.Checks;

namespace RigLang.Analysis.Tests.Checks;

/// <summary>A line that accepts a finding is called useless only when it is known to be: a check that lacks a number is silent too.</summary>
public sealed class AllowanceTests
{
    /// <summary>A van and a trailer to which there is nothing to object.</summary>
    private static readonly string Pair = Allowances.AllowsNothing.Good;

    private static readonly string Accepting = Pair.Replace("    stabiliser yes\n", "") + "\n    allow no-sway-device because \"we hold 80 km/h\"";

    private static readonly string Useless = Pair + "\n    allow no-sway-device because \"we hold 80 km/h\"";

    [Fact]
    public void A_line_that_accepts_something_is_not_reported() => Study.Slugs(Accepting).Should().NotContain("allows-nothing").And.NotContain("no-sway-device");

    [Fact]
    public void A_line_that_accepts_nothing_is() => Study.Slugs(Useless).Should().Contain("allows-nothing");

    [Theory]
    [InlineData("    mass 1500 kg", "    mas 1500 kg")]
    [InlineData("    mass 1500 kg", "    mass 1500")]
    [InlineData("    mass 1500 kg", "")]
    [InlineData("    mass 1500 kg", "    mass ?")]
    [InlineData("trailer box", "trailer bx")]
    [InlineData("        carries 1150 kg", "        carries 1150 kgg")]
    public void Nor_is_it_while_the_check_cannot_be_made(string line, string typed) =>
        Study.Slugs(Accepting.Replace(line, typed)).Should().NotContain("allows-nothing");

    [Fact]
    public void An_error_in_a_rating_leaves_open_whether_something_is_over_it() =>
        Study.Slugs(Useless.Replace("    gross-rating 2000 kg", "    gros-rating 2000 kg")).Should().NotContain("allows-nothing");

    [Fact]
    public void An_error_in_what_the_rig_is_like_counts_as_its_own() =>
        Study.Slugs(Useless + "\n    restoraton 50 %\n\nrig second like pair\n    allow tongue-below-usual because \"the maker asks for 5 %\"").Should().NotContain("allows-nothing");

    [Fact]
    public void A_warning_about_the_trailer_leaves_nothing_open() =>
        Study.Slugs(Useless.Replace("    gross-rating 2000 kg", "    gross-rating 2000 kg\n    height 0.2 m")).Should().Contain("allows-nothing");
}
