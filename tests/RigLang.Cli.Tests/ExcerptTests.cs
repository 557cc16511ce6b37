using RigLang.Cli.Checking;
using RigLang.Syntax;

namespace RigLang.Cli.Tests;

public sealed class ExcerptTests
{
    [Theory]
    [InlineData("mass 5 kk", 7, 2, "mass 5 kk", 7, 2)]
    [InlineData("mass", 4, 0, "mass", 4, 1)] // behind the last character, where something is missing
    [InlineData("\tmass", 1, 4, "    mass", 4, 4)]
    [InlineData("ab\tmass", 3, 4, "ab  mass", 4, 4)] // a tab reaches to the next multiple of four
    [InlineData("wagen \"車\" x", 10, 1, "wagen \"車\" x", 11, 1)] // a wide character takes two columns
    [InlineData("e\u0301 x", 3, 1, "e\u0301 x", 2, 1)] // a combining mark takes none
    [InlineData("a\u001bb", 1, 1, "a\uFFFDb", 1, 1)]
    [InlineData("", 0, 0, "", 0, 1)]
    [InlineData("short", 50, 3, "short", 5, 1)] // a span that the line no longer has
    public void Carets_stand_under_the_stretch(string line, int start, int length, string text, int before, int carets) =>
        Excerpt.Of(line, new TextSpan(start, length), 70).Should().Be(new Excerpt(text, before, carets));

    [Theory]
    [InlineData(0)]
    [InlineData(60)]
    [InlineData(500)]
    [InlineData(990)]
    public void Of_a_long_line_the_surroundings_are_shown(int start)
    {
        var line = string.Concat(Enumerable.Range(0, 100).Select(n => $"{n:000}-------"));

        var excerpt = Excerpt.Of(line, new TextSpan(start, 3), 70);

        excerpt.Text.Length.Should().BeLessThanOrEqualTo(70);
        excerpt.Text.Substring(excerpt.Before, excerpt.Length).Should().Be(line.Substring(start, 3));
    }

    [Fact]
    public void Half_a_surrogate_pair_takes_the_place_of_one_character() =>
        Excerpt.Of('\uD83D' + " x", new TextSpan(2, 1), 70).Should().Be(new Excerpt("\uFFFD x", 2, 1));

    [Fact]
    public void A_run_of_carets_ends_with_the_shown_text()
    {
        var excerpt = Excerpt.Of(new string('x', 1000), new TextSpan(10, 900), 70);

        (excerpt.Before + excerpt.Length).Should().BeLessThanOrEqualTo(70);
    }
}
