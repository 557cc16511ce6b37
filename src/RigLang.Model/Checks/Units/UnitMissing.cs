using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A number stands without its unit.</summary>
public static class UnitMissing
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL201",
        Slug = "unit-missing",
        Severity = Severity.Error,
        Summary = "A number stands without its unit.",
        Why = "A bare 2.94 could be metres, feet or inches; the tool never guesses.",
        Bad = """
            vehicle van
                wheelbase 2.94
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Write the unit behind the number.",
        CanBeAllowed = false,
    };
}
