using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Tests.Results;

public sealed class CatalogueTests
{
    [Fact]
    public void No_result_is_spelt_like_a_fact()
    {
        var keywords = Vocabulary.Blocks.SelectMany(block => block.Facts).Select(fact => fact.Keyword).ToHashSet(StringComparer.Ordinal);

        Catalogue.Results.Select(result => result.Name).Should().OnlyHaveUniqueItems().And.NotContain(name => keywords.Contains(name));
    }

    [Fact]
    public void Every_result_explains_itself() =>
        Catalogue.Results.Should().OnlyContain(result => result.Title.Length > 0 && result.Meaning.Length > 0 && result.Formula.Length > 0 && result.Source.Length > 0);

    [Fact]
    public void Every_limit_of_a_built_in_practice_can_be_read()
    {
        foreach (var practice in BuiltInPractices.All)
        {
            var written = practice.Block.All(PracticeFacts.Limit);
            written.Should().NotBeEmpty();
            Practice.Of(practice).Limits.Should().HaveSameCount(written, $"each limit of {practice.Name} names a result and a bound of its kind");
        }
    }

    [Theory]
    // Common practice, values from memory: tongue 10 to 15 % in North America, 4 to 7 % in Europe.
    [InlineData("common-na", 0.12, Miss.None)]
    [InlineData("common-na", 0.08, Miss.Below)]
    [InlineData("common-na", 0.16, Miss.Above)]
    [InlineData("common-eu", 0.05, Miss.None)]
    [InlineData("common-eu", 0.12, Miss.Above)]
    public void Practices_differ_in_what_tongue_share_they_find_usual(string practice, double share, Miss miss) =>
        Practice.Of(BuiltInPractices.Find(DeclarationKind.Practice, practice)).Limits.Single(limit => limit.Result.Name == "tongue-ratio").Judge(share).Should().Be(miss);

    [Fact]
    public void No_built_in_practice_speaks_of_ratings() =>
        BuiltInPractices.All.SelectMany(practice => Practice.Of(practice).Limits).Select(limit => limit.Result.Name).Should().NotContain(["rating-use", "tyre-use"], "ratings hold for every rig");
}
