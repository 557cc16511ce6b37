using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A sum, a compound or a half-width has no clear meaning.</summary>
public static class SumUnclear
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL209",
        Slug = "sum-unclear",
        Severity = Severity.Error,
        Summary = "A sum, a compound or a half-width has no clear meaning.",
        Why = "Adding temperatures, or feet behind inches, means nothing that a reader could check.",
        Bad = """
            trailer t
                length 4 in 33 ft
            """,
        Good = """
            trailer t
                length 33 ft 4 in
            """,
        Fix = "Write the larger unit first, and add only what can be added.",
        CanBeAllowed = false,
    };
}
