namespace RigLang.Syntax.Tests;

/// <summary>Composed forms after the Unicode Character Database and the examples of Unicode Standard Annex 15.</summary>
public class NamesTests
{
    [Theory]
    [InlineData("van", "van")]
    [InlineData("e\u0301", "\u00E9")]
    [InlineData("an\u0303o", "a\u00F1o")]
    [InlineData("u\u0308\u0304", "\u01D6")] // two marks, one after the other
    [InlineData("s\u0307\u0323", "\u1E69")] // dot above typed before dot below
    [InlineData("\u1E61\u0323", "\u1E69")]
    [InlineData("\u1E63\u0307", "\u1E69")]
    [InlineData("\u1E0B\u0323", "\u1E0D\u0307")] // no character has both dots on d
    [InlineData("q\u0307\u0323", "q\u0323\u0307")]
    [InlineData("\u1F71", "\u03AC")] // a Greek letter that is encoded twice
    [InlineData("\u1112\u1161\u11AB", "\uD55C")] // Korean letters make a syllable
    [InlineData("\uD558\u11AB", "\uD55C")]
    [InlineData("\u0958", "\u0915\u093C")] // taken apart and never put together
    [InlineData("\u304B\u3099", "\u304C")]
    [InlineData("\uF900", "\u8C48")]
    [InlineData("車輪", "車輪")]
    public void Names_have_one_spelling(string typed, string composed)
    {
        Names.Compose(typed).Should().Be(composed);
        Names.Compose(composed).Should().Be(composed);
        Fixture.Fact("vehicle a" + typed).Arguments[0].As<RigLang.Syntax.Tree.WordSyntax>().Text.Should().Be(Names.Compose("a" + typed));
    }

    [Theory]
    [InlineData("a", true)]
    [InlineData("front-axle", true)]
    [InlineData("b96", true)]
    [InlineData("a-1", true)]
    [InlineData("né", true)]
    [InlineData("ne\u0301", true)]
    [InlineData("車輪", true)]
    [InlineData("\uD801\uDC28", true)] // a small letter outside the first plane
    [InlineData("", false)]
    [InlineData("-a", false)]
    [InlineData("a-", false)]
    [InlineData("a--b", false)]
    [InlineData("1a", false)]
    [InlineData("A", false)]
    [InlineData("Ä", false)]
    [InlineData("a_b", false)]
    [InlineData("a\u200Bb", false)]
    [InlineData("a\uD801", false)]
    [InlineData("\u0301a", false)]
    public void Names_are_small_letters_digits_and_single_hyphens(string word, bool isName) => Names.IsName(word).Should().Be(isName);

    [Theory]
    [InlineData("Front_Axle", "front-axle")]
    [InlineData("Ñandú", "ñandú")]
    [InlineData("a--b", "a-b")]
    [InlineData("two.wheels", "two-wheels")]
    public void A_malformed_name_is_told_what_it_could_be(string typed, string mended) =>
        Fixture.Line("vehicle " + typed).Findings.Should().ContainSingle().Which.Fixes.Should().ContainSingle().Which.NewText.Should().Be(mended);
}
