namespace RigLang.Syntax.Checks.Writing;

public static class HalfWidthWithoutValue
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL119",
        Slug = "half-width-without-value",
        Severity = Severity.Error,
        Summary = "`±` has no quantity on one of its sides.",
        Why = "`± 15 kg` says how far off a value can be; it wants the value before it and the half-width behind it.",
        Bad = "trailer wren\n    mass 1790 kg ±\n",
        Good = "trailer wren\n    mass 1790 kg ± 15 kg\n",
        Fix = "Write value, `±` and half-width, or the value alone.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan sign) => new(Check, sign, "± stands between a value and its half-width, as in 1790 kg ± 15 kg.");
}
