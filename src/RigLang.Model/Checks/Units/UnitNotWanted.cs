using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A unit stands where a bare number is wanted.</summary>
public static class UnitNotWanted
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL207",
        Slug = "unit-not-wanted",
        Severity = Severity.Error,
        Summary = "A unit stands where a bare number is wanted.",
        Why = "A gear ratio or a count of links has no unit; with one, something else is meant.",
        Bad = """
            rig r
                links 5 mm
            """,
        Good = """
            rig r
                links 5
            """,
        Fix = "Leave the unit out.",
        CanBeAllowed = false,
    };
}
