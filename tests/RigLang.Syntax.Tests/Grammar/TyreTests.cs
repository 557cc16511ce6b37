using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Grammar;

/// <summary>Forms of sidewall marking after ISO 4000-1 and the trade's light-truck and flotation sizes, values from memory.</summary>
public class TyreTests
{
    [Theory]
    [InlineData("tyres 245/55R19 107W XL", "", 245, 55, "R", 19, "", 107, null, "W", "XL")]
    [InlineData("tyres LT275/70R18 125/122S E", "LT", 275, 70, "R", 18, "", 125, 122, "S", "E")]
    [InlineData("tyres ST225/75R15 117M E", "ST", 225, 75, "R", 15, "", 117, null, "M", "E")]
    [InlineData("tyres 195/70R15C 104/102R", "", 195, 70, "R", 15, "C", 104, 102, "R", "")]
    [InlineData("tyres P235/75R15 108S # worn", "P", 235, 75, "R", 15, "", 108, null, "S", "")]
    [InlineData("tyres 245/40ZR18 97Y", "", 245, 40, "ZR", 18, "", 97, null, "Y", "")]
    [InlineData("tyres 155/70R13 75", "", 155, 70, "R", 13, "", 75, null, null, "")]
    [InlineData("spare 185/65R15 88H", "", 185, 65, "R", 15, "", 88, null, "H", "")]
    public void Metric_sizes(
        string line, string prefix, double width, double aspect, string construction, double rim, string suffix, int index, int? dual, string? symbol, string marks)
    {
        var tyre = Fixture.Fact(line).Arguments.Should().ContainSingle().Which.Should().BeOfType<TyreSyntax>().Subject;
        tyre.Size.Should().Be(new TyreSize(prefix, width, aspect, null, null, construction, rim, suffix));
        tyre.Service.Should().Be(new TyreService(index, dual, symbol));
        string.Join(' ', tyre.Marks).Should().Be(marks);
        Fixture.Line(line).Findings.Should().BeEmpty();
    }

    [Fact]
    public void Sizes_by_diameter() =>
        Tyre("tyres 31x10.5R15LT 109Q").Size.Should().Be(new TyreSize("", null, null, 31, 10.5, "R", 15, "LT"));

    [Fact]
    public void A_size_without_its_height_leaves_the_height_unknown() => Tyre("tyres 185R14C 102/100Q").Size!.AspectPercent.Should().BeNull();

    [Theory]
    [InlineData("tyres 245/55 R19 107W", "245/55R19")]
    [InlineData("tyres 245/55 r 19 107W", "245/55R19")]
    [InlineData("tyres 245/55r19 107W", "245/55R19")]
    public void Another_spelling_is_read_and_reported(string line, string meant)
    {
        Tyre(line).Size!.RimInches.Should().Be(19);
        var finding = Fixture.Line(line).Findings.Should().ContainSingle().Subject;
        finding.Check.Slug.Should().Be("tyre-spelling");
        finding.Fixes[0].NewText.Should().Be(meant);
    }

    [Theory]
    [InlineData("tyres 24555 107W", "24555")]
    [InlineData("tyres 245/55R19 107W XXL", "XXL")]
    [InlineData("tyres 245/55R19 1077W", "1077W")]
    public void What_is_no_marking_is_reported_in_its_place(string line, string place)
    {
        var read = Fixture.Line(line);
        var finding = read.Findings.Should().ContainSingle().Subject;
        finding.Check.Slug.Should().Be("tyre-unreadable");
        read.TextOf(finding.Span).Should().Be(place);
    }

    [Theory]
    [InlineData("tyres ?", typeof(QuerySyntax))]
    [InlineData("spare none", typeof(WordSyntax))]
    public void Questions_and_words_are_read_as_everywhere(string line, Type argument) => Fixture.Fact(line).Arguments.Should().ContainSingle().Which.Should().BeOfType(argument);

    private static TyreSyntax Tyre(string line) => (TyreSyntax)Fixture.Fact(line).Arguments[0];
}
