using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A keyword stands in a block where it is not at home.</summary>
public static class KeywordElsewhere
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL151",
        Slug = "keyword-elsewhere",
        Severity = Severity.Error,
        Summary = "A keyword stands in a block where it is not at home.",
        Why = "Each keyword is at home in one block of a declaration, so a wrong indent can never hand a fact to another owner.",
        Bad = """
            vehicle van
                axle-rating 1350 kg
            """,
        Good = """
            vehicle van
                axle front
                    axle-rating 1350 kg
            """,
        Fix = "Move the line to the block that the message names, or mend its indent.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place keyword, BlockDeclaration block, FactDeclaration fact)
    {
        var word = keyword.Text;
        var home = HomeOf(fact, block);
        return new Finding(Declaration, keyword, $"`{word}` belongs {home}, not {(block.Parent is null ? $"directly in {Phrase.WithArticle(block.Keyword)}" : $"under `{block.Keyword}`")}.");
    }

    /// <summary>Where the fact stands, told to somebody who wrote it in the block.</summary>
    internal static string HomeOf(FactDeclaration fact, BlockDeclaration block) =>
        fact.Home.Kind != block.Kind ? $"in {Phrase.WithArticle(fact.Home.Path.Replace(".", "'s ", StringComparison.Ordinal))}"
        : fact.Home.Parent is null ? $"directly under the {fact.Home.Keyword}, one indent in"
        : $"under `{fact.Home.Keyword}`, indented below it";
}
