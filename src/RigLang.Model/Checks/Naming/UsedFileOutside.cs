using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A path leads out of the workspace.</summary>
public static class UsedFileOutside
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL163",
        Slug = "used-file-outside",
        Severity = Severity.Error,
        Summary = "A path leads out of the workspace.",
        Why = "A file must mean the same on every machine, whatever lies around the folder that is under version control.",
        Bad = """
            use "../../../vans.rig"
            """,
        Good = """
            vehicle van
            """,
        Fix = "Move the file into the workspace, or open the folder that holds both.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place path, string text) =>
        new(Declaration, path, $"\"{text}\" leads out of the folder that is open; what lies outside isn't read. Move the file inside, or open the folder that holds both.");
}
