using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A unit is known, but spelt otherwise here.</summary>
public static class UnitSpeltOtherwise
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL206",
        Slug = "unit-spelt-otherwise",
        Severity = Severity.Error,
        Summary = "A unit is known, but spelt otherwise here.",
        Why = "One spelling keeps files readable and differences honest.",
        Bad = """
            trailer t
                mass 4000 lbs
            """,
        Good = """
            trailer t
                mass 4000 lb
            """,
        Fix = "Take the spelling that the message offers.",
        CanBeAllowed = false,
    };
}
