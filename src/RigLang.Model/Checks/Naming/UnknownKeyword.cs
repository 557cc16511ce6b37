using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A line begins with a word that is no keyword here.</summary>
public static class UnknownKeyword
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL150",
        Slug = "unknown-keyword",
        Severity = Severity.Error,
        Summary = "A line begins with a word that is no keyword here.",
        Why = "A line that is not understood would be missing from every sum, so it is never skipped in silence.",
        Bad = """
            vehicle van
                wheelbse 2.94 m
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Write the keyword of the reference page; the message names the nearest.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place keyword, BlockDeclaration block)
    {
        if (TradeWords.Find(keyword, block) is { } meant)
        {
            return Meant(meant.Place, meant.Fact, block);
        }

        var word = keyword.Text;
        var near = Spelling.Nearest(word, block.Facts.Concat(Facts.EverywhereFacts.Block.Facts).Select(fact => fact.Keyword));
        return near is null
            ? new Finding(Declaration, keyword, $"`{word}` is no keyword {Where(block)}. Completion lists those that are; a remark begins with `#`.")
            : new Finding(Declaration, keyword, $"`{word}` is no keyword {Where(block)}. Did you mean `{near}`?")
            {
                Fixes = [new Fix($"Write `{near}`", keyword, near)],
            };
    }

    private static Finding Meant(Place place, FactDeclaration fact, BlockDeclaration block)
    {
        var atHome = fact.Home == block || fact.Home.Kind is null;
        var where = atHome ? "here" : $"and stands {KeywordElsewhere.HomeOf(fact, block)}";
        return new Finding(Declaration, place, $"`{place.Text}` is called `{fact.Keyword}` {where}: {fact.Meaning}.")
        {
            Fixes = atHome ? [new Fix($"Write `{fact.Keyword}`", place, fact.Keyword)] : [],
        };
    }

    private static string Where(BlockDeclaration block) => block.Parent is null ? $"of {Phrase.WithArticle(block.Keyword)}" : $"under `{block.Keyword}`";
}
