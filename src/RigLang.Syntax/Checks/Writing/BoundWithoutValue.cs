namespace RigLang.Syntax.Checks.Writing;

public static class BoundWithoutValue
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL118",
        Slug = "bound-without-value",
        Severity = Severity.Error,
        Summary = "No value follows `<`, `>`, `<=`, `>=` or `=`.",
        Why = "A limit without a value limits nothing.",
        Bad = "rig tour\n    expect damping >\n",
        Good = "rig tour\n    expect damping > 0.10\n",
        Fix = "Write the value behind the sign.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan sign, string text) => new(Check, sign, $"A value is missing behind {Shown.Of(text)}.");
}
