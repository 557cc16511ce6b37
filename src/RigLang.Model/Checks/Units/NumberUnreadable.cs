using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A number cannot be read.</summary>
public static class NumberUnreadable
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL208",
        Slug = "number-unreadable",
        Severity = Severity.Error,
        Summary = "A number cannot be read.",
        Why = "A misread digit is worse than none.",
        Bad = """
            trailer t
                mass 1.790.0 kg
            """,
        Good = """
            trailer t
                mass 1790 kg
            """,
        Fix = "Write digits with one decimal point; `_` groups them; fractions go before inches and feet.",
        CanBeAllowed = false,
    };
}
