using FsCheck.Xunit;

namespace RigLang.Syntax.Tests;

public class SpellingTests
{
    [Theory]
    [InlineData("kitten", "sitting", 3)] // the textbook example of edit distance
    [InlineData("wheelbase", "wheelbase", 0)]
    [InlineData("wheelbsae", "wheelbase", 1)] // two letters turned round are one slip
    [InlineData("ca", "abc", 3)] // no letter is touched twice
    [InlineData("", "abc", 3)]
    public void Distance_counts_slips(string first, string second, int distance)
    {
        Spelling.Distance(first, second).Should().Be(distance);
        Spelling.Distance(second, first).Should().Be(distance);
    }

    [Property]
    public void Distance_is_symmetric_and_zero_only_for_equal_words(string? first, string? second)
    {
        var (a, b) = (first ?? "", second ?? "");
        Spelling.Distance(a, b).Should().Be(Spelling.Distance(b, a));
        (Spelling.Distance(a, b) == 0).Should().Be(a == b);
    }

    [Theory]
    [InlineData("whelbase", "wheelbase")]
    [InlineData("mas", "mass")]
    [InlineData("overhagn", "overhang")]
    [InlineData("refrigerator", null)]
    [InlineData("wheelbase", null)] // the word itself is no correction
    public void The_nearest_word_is_found(string word, string? nearest) => Spelling.Nearest(word, ["wheelbase", "mass", "overhang"]).Should().Be(nearest);

    [Fact]
    public void Of_two_equally_near_words_the_first_is_taken() => Spelling.Nearest("bat", ["cat", "rat"]).Should().Be("cat");

    [Fact]
    public void A_huge_word_is_near_to_nothing() => Spelling.Nearest(new string('a', 1_000_000), [new string('a', 1_000_001)]).Should().BeNull();
}
