using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>The same keyword, or the same keyword and key, stands twice in one block.</summary>
public static class SaidTwice
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL152",
        Slug = "said-twice",
        Severity = Severity.Error,
        Summary = "The same keyword, or the same keyword and key, stands twice in one block.",
        Why = "Nothing is overwritten by the later line and nothing is added up; after a merge that is what you want to see.",
        Bad = """
            vehicle van
                wheelbase 2.94 m
                wheelbase 2.92 m
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Keep one of the two lines.",
        CanBeAllowed = false,
    };

    public static Finding Report(Fact second, Fact first) =>
        new(Declaration, second.Place, $"`{second.Title}` is said twice; the first line counts until one of them is gone.")
        {
            Related = [new Related(first.Place, $"`{first.Title}` is first said here")],
        };
}
