using System.Text.RegularExpressions;
using RigLang.Analysis.Checks;
using RigLang.Analysis.Results;
using RigLang.Model.Declaring;

namespace RigLang.Architecture.Tests;

/// <summary>The naming rule of DEVELOPERS.md, as far as a test can hold it against what users read.</summary>
public sealed partial class WordingTests
{
    [Fact]
    public void No_label_uses_a_word_that_we_keep_away_from() =>
        Labels().Where(label => Avoided().IsMatch(label)).Should().BeEmpty();

    [Fact]
    public void No_result_is_spelt_like_a_fact() =>
        Catalogue.Results.Select(result => result.Name).Intersect(Vocabulary.Blocks.SelectMany(block => block.Facts).Select(fact => fact.Keyword)).Should().BeEmpty();

    [Fact]
    public void No_code_and_no_slug_is_used_twice()
    {
        AnalysisChecks.Declarations.Select(check => check.Code).Should().OnlyHaveUniqueItems();
        AnalysisChecks.Declarations.Select(check => check.Slug).Should().OnlyHaveUniqueItems();
    }

    private static IEnumerable<string> Labels() =>
    [
        .. Catalogue.Results.SelectMany(result => new[] { result.Name, result.Title, result.Meaning }),
        .. Vocabulary.Blocks.SelectMany(block => block.Facts).SelectMany(fact => new[] { fact.Keyword, fact.Meaning }),
        .. AnalysisChecks.Declarations.SelectMany(check => new[] { check.Slug, check.Summary, check.Why, check.Fix }),
    ];

    [GeneratedRegex(@"\b(my|garage|vehicle profile|score|stars?|traffic.light|wizard|SoC|steer axles?|drive axles?|match(ing)? index)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Avoided();
}
