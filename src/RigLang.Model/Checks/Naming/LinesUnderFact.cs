using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>Lines are indented under one that opens no block.</summary>
public static class LinesUnderFact
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL164",
        Slug = "lines-under-a-fact",
        Severity = Severity.Error,
        Summary = "Lines are indented under one that opens no block.",
        Why = "They have no owner there, so they count for nothing until the indent is mended.",
        Bad = """
            vehicle van
                wheelbase 2.94 m
                    overhang 1.09 m
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
                overhang 1.09 m
            """,
        Fix = "Take the indent back, or put the lines under the block they belong to.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place line, string owner) =>
        new(Declaration, line, $"This is indented under `{owner}`, which opens no block; it isn't read. Take the indent back.");
}
