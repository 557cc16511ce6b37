using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A unit has several sizes and the line does not say which.</summary>
public static class UnitAmbiguous
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL203",
        Slug = "unit-ambiguous",
        Severity = Severity.Error,
        Summary = "A unit has several sizes and the line does not say which.",
        Why = "A ton is 1000, 907 or 1016 kg and a gallon 3.8 or 4.5 L: far more than any margin on an axle.",
        Bad = """
            trailer t
                mass 2 ton
            """,
        Good = """
            trailer t
                mass 2 t
            """,
        Fix = "Write the one that is meant: `t`, `short-ton` or `long-ton`; `us-gal` or `imp-gal`; `us-hp` or `metric-hp`.",
        CanBeAllowed = false,
    };
}
