using RigLang.Analysis.Checks;
using RigLang.Analysis.Results;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax;

namespace RigLang.Cli.Explaining;

/// <summary>Finds what a word means: checks, results, facts, blocks, units, and words that people use elsewhere.</summary>
internal static class Lexicon
{
    /// <summary>Everything of that name; empty when there is nothing.</summary>
    public static IReadOnlyList<Article> Find(string word)
    {
        var articles = new List<Article>();
        if (AnalysisChecks.Find(word) is { } check)
        {
            articles.Add(Articles.Of(check));
        }

        if (Catalogue.FindResult(word) is { } result)
        {
            articles.Add(Articles.Of(result));
        }

        articles.AddRange(Vocabulary.Blocks.Where(block => block.Keyword == word || (block.Path == word && block.Parent is not null)).Select(Articles.Of));
        articles.AddRange(Facts.Where(fact => fact.Keyword == word || fact.FullName == word).Where(fact => fact.Opens is null).Select(Articles.Of));
        if (articles.Count == 0)
        {
            articles.AddRange(Constructs.Find(word));
        }

        // A fact that is spelt like a unit is meant as the fact: nobody asks what `mass` is measured in by that word.
        if (articles.Count == 0 && UnitTable.Find(word) is { } unit)
        {
            articles.Add(Articles.Of(unit));
        }

        return Articles.Merged(articles);
    }

    /// <summary>The facts that go by that word elsewhere.</summary>
    public static IReadOnlyList<FactDeclaration> FindByOtherName(string word) =>
        [.. Facts.Where(fact => fact.Aliases.Contains(word, StringComparer.OrdinalIgnoreCase))];

    /// <summary>The nearest word that means something.</summary>
    public static string? Nearest(string word) => Spelling.Nearest(word, Words.Distinct());

    public static IEnumerable<FactDeclaration> Facts => Vocabulary.Blocks.SelectMany(block => block.Facts).Concat(EverywhereFacts.Block.Facts).Concat(FigureFacts.Block.Facts);

    private static IEnumerable<string> Words =>
    [
        .. AnalysisChecks.Declarations.Select(check => check.Slug), .. Catalogue.Results.Select(result => result.Name), .. Facts.Select(fact => fact.Keyword),
        .. Vocabulary.Blocks.Select(block => block.Keyword), .. Constructs.Words, .. UnitTable.Spellings, .. Facts.SelectMany(fact => fact.Aliases),
    ];
}
