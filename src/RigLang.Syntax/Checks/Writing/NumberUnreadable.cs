namespace RigLang.Syntax.Checks.Writing;

public static class NumberUnreadable
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL112",
        Slug = "number-unreadable",
        Severity = Severity.Error,
        Summary = "Something begins like a number and isn't one.",
        Why = "A value that can be read in two ways, or not at all, isn't used.",
        Bad = "vehicle van\n    wheelbase 2.9.4 m\n",
        Good = "vehicle van\n    wheelbase 2.94 m\n",
        Fix = "Write digits with at most one decimal point: `2.94`, `10_400`; before `in` and `ft` also `5/16` and `2-5/16`.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, string number)
    {
        var trimmed = number.TrimEnd('.');
        return trimmed.Length < number.Length && trimmed.IndexOf('.', StringComparison.Ordinal) < 0
            ? new LineFinding(Check, span, $"{Shown.Of(number)} ends in a point: write {Shown.Of(trimmed)}, or digits behind the point.", [new LineFix("Take the point out", span, trimmed)])
            : new LineFinding(Check, span, $"{Shown.Of(number)} is no number. Numbers look like 2.94, 10_400 or, before in and ft, 2-5/16.");
    }
}
