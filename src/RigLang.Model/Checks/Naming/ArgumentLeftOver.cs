using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>Something stands behind what the keyword takes.</summary>
public static class ArgumentLeftOver
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL155",
        Slug = "argument-left-over",
        Severity = Severity.Error,
        Summary = "Something stands behind what the keyword takes.",
        Why = "What nobody reads may be what you meant; it is marked, and the rest of the line still counts.",
        Bad = """
            vehicle van
                wheelbase 2.94 m long
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Take it away, put it on a line of its own, or make it a comment with `#`.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place place, FactDeclaration? fact) =>
        new(Declaration, place, fact is null
            ? $"`{place.Text}` is left over: nothing may stand here."
            : $"`{place.Text}` is left over: behind `{fact.Keyword}` stands {fact.Signature.Words}.");
}
