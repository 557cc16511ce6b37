using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A unit is spelt in a way that is not known.</summary>
public static class UnitUnknown
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL202",
        Slug = "unit-unknown",
        Severity = Severity.Error,
        Summary = "A unit is spelt in a way that is not known.",
        Why = "A quantity without a known unit has no value.",
        Bad = """
            vehicle van
                wheelbase 2.94 metrs
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Write one of the units that the message offers.",
        CanBeAllowed = false,
    };
}
