using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A unit measures something else than the keyword wants.</summary>
public static class UnitOfSomethingElse
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL204",
        Slug = "unit-of-something-else",
        Severity = Severity.Error,
        Summary = "A unit measures something else than the keyword wants.",
        Why = "Often two lines were mixed up, and both are wrong then.",
        Bad = """
            vehicle van
                wheelbase 2.94 kg
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Write the quantity that the keyword takes.",
        CanBeAllowed = false,
    };
}
