namespace RigLang.Syntax.Checks.Writing;

public static class RangeWithoutEnd
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL117",
        Slug = "range-without-end",
        Severity = Severity.Error,
        Summary = "A range lacks its lower or upper end.",
        Why = "A range with one end is a bound, and the bound says which side is meant.",
        Bad = "practice ours\n    limit tongue-ratio 7 % ..\n",
        Good = "practice ours\n    limit tongue-ratio 7 % .. 10 %\n",
        Fix = "Write both ends, or a bound such as `> 7 %`.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan dots) => new(Check, dots, "A range has a value on both sides of the two dots; for one end alone write a bound: > 7 %.");
}
