using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>Lines stand before the first declaration.</summary>
public static class NothingOpen
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL165",
        Slug = "nothing-open",
        Severity = Severity.Error,
        Summary = "Lines stand before the first declaration.",
        Why = "A fact without an owner counts for nothing.",
        Bad = """
                wheelbase 2.94 m
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Open a declaration above it: `vehicle NAME` in the first column.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place line) =>
        new(Declaration, line, "This belongs to no declaration. Open one above it in the first column: `vehicle NAME`, `trailer NAME`, `rig NAME` and so on.");
}
