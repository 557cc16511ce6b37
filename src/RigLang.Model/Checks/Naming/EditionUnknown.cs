using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>The file was written for an edition of the language that this program does not know.</summary>
public static class EditionUnknown
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL166",
        Slug = "edition-unknown",
        Severity = Severity.Error,
        Summary = "The file was written for an edition of the language that this program does not know.",
        Why = "Estimates and rules change over the years; read by another edition the file may mean something else.",
        Bad = """
            language 7
            """,
        Good = """
            language 1
            """,
        Fix = "Use a newer program, or write the edition that the file is meant for.",
        CanBeAllowed = false,
    };

    public const int Newest = 1;

    public static Finding Report(Place edition) =>
        new(Declaration, edition, $"This program knows edition {Newest} of the language. The file is read by that; results may differ from what its author saw.");
}
