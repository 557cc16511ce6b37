using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A `use` names a file that cannot be read.</summary>
public static class UsedFileMissing
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL162",
        Slug = "used-file-missing",
        Severity = Severity.Error,
        Summary = "A `use` names a file that cannot be read.",
        Why = "Everything that the other file holds is out of sight until it is found.",
        Bad = """
            use "vans.rig"
            """,
        Good = """
            vehicle van
            """,
        Fix = "Mend the path; it is counted from the folder of this file, with forward slashes.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place path, string text, string problem) =>
        new(Declaration, path, $"\"{text}\" can't be used: {problem}. The path is counted from this file's own folder, with forward slashes.");
}
