using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Checks.Writing;

public static class UseWithoutPath
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL129",
        Slug = "use-without-path",
        Severity = Severity.Error,
        Summary = "`use` isn't followed by a path in quotes.",
        Why = "Without the path no other file comes into sight, and its names stay unknown.",
        Bad = "use vehicles/van.rig\n",
        Good = "use \"vehicles/van.rig\"\n",
        Fix = "Write the path of the file in double quotes, seen from this file's folder.",
        CanBeAllowed = false,
    };

    private const int LongestPath = 260;

    internal static LineFinding Of(TextSpan place, string? typed)
    {
        const string message = "Behind `use` stands the path of a file in double quotes, as in use \"vehicles/van.rig\".";
        return typed is null or { Length: > LongestPath } || typed.Contains('"', StringComparison.Ordinal)
            ? new LineFinding(Check, place, message)
            : new LineFinding(Check, place, message, [new LineFix("Put the path in quotes", place, $"\"{typed}\"")]);
    }
}
