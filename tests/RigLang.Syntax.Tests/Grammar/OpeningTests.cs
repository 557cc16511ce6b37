using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Grammar;

public class OpeningTests
{
    [Theory]
    [InlineData("vehicle van", "vehicle", "van", null, null)]
    [InlineData("vehicle van \"Carrier\" # c", "vehicle", "van", null, "Carrier")]
    [InlineData("rig full like coast \"Restored\"", "rig", "full", "coast", "Restored")]
    [InlineData("rig full like coast", "rig", "full", "coast", null)]
    [InlineData("rig full \"Restored\" like coast", "rig", "full", "coast", "Restored")] // reported, and read
    [InlineData("vehicle \"Carrier\"", "vehicle", null, null, "Carrier")]
    [InlineData("vehicel van \"Carrier\"", "vehicel", "van", null, "Carrier")]
    [InlineData("caravan wren", "caravan", "wren", null, null)]
    public void Openings(string line, string kind, string? name, string? parent, string? title)
    {
        var opening = FileSyntax.Parse(line).Declarations[0].Opening!;
        opening.Kind.Text.Should().Be(kind);
        (opening.Name?.Text).Should().Be(name);
        (opening.Parent?.Text).Should().Be(parent);
        (opening.Title?.Value).Should().Be(title);
        opening.Stray.Should().BeEmpty();
    }

    [Theory]
    [InlineData("vehicel van", "vehicle")]
    [InlineData("trailr wren \"Caravan\"", "trailer")]
    [InlineData("caravan wren", "trailer")]
    [InlineData("pratcice ours", "practice")]
    [InlineData("user \"x.rig\"", "use")]
    public void An_unknown_kind_is_told_the_nearest(string line, string meant)
    {
        var finding = FileSyntax.Parse(line).Lines[0].Findings.Should().ContainSingle().Subject;
        finding.Check.Slug.Should().Be("unknown-kind");
        finding.Fixes.Should().ContainSingle().Which.NewText.Should().Be(meant);
    }

    [Theory]
    [InlineData("used 28.9 kWh")] // near `use`, but a fact of a run
    [InlineData("head off")] // near `load`
    [InlineData("wheelbase 2.94 m")]
    [InlineData("axle front")]
    [InlineData("leg quarry \"Quarry\"")]
    public void A_fact_in_the_first_column_is_a_forgotten_indent(string line) => Fixture.SlugsOf("rig a\n" + line).Should().Equal("fact-in-first-column");

    [Fact]
    public void What_is_too_much_is_kept_and_reported_once()
    {
        var file = FileSyntax.Parse("vehicle van like other \"Title\" and more 5 kg");
        file.Declarations[0].Opening!.Stray.Should().HaveCount(3);
        file.Findings().Should().ContainSingle().Which.Finding.Check.Slug.Should().Be("stray-text");
    }

    [Fact]
    public void A_title_without_quotes_is_reported_as_that_and_only_once()
    {
        var finding = FileSyntax.Parse("rig show-day To the Show 2").Findings().Should().ContainSingle().Which.Finding;

        finding.Check.Slug.Should().Be("stray-text");
        finding.Fixes.Should().ContainSingle().Which.NewText.Should().Be("\"To the Show 2\"");
    }

    [Fact]
    public void Use_and_language_are_declarations_of_their_own()
    {
        var file = FileSyntax.Parse("# head\nlanguage 1\nuse \"a/van.rig\" # mine\nvehicle van\n");
        file.Declarations.Select(declaration => declaration.Head?.GetType()).Should().Equal(null, typeof(LanguageSyntax), typeof(UseSyntax), typeof(OpeningSyntax));
        ((UseSyntax)file.Declarations[2].Head!).Path!.Value.Should().Be("a/van.rig");
        file.Findings().Should().BeEmpty();
    }
}
