namespace RigLang.Syntax.Checks.Writing;

public static class DateUnreadable
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL123",
        Slug = "date-unreadable",
        Severity = Severity.Error,
        Summary = "A date, a time of day or a week isn't written in the one form that files know.",
        Why = "03.10. and 10/3 name different days to different readers. Year, month, day names one.",
        Bad = "weighing may\n    date 2026/05/02\n",
        Good = "weighing may\n    date 2026-05-02\n",
        Fix = "Write dates as `2026-05-02`, times as `08:15`, both as `2026-05-02 08:15 +10:00`, weeks as `2026-W18`.",
        Source = "ISO 8601",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, string typed, string? meant)
    {
        const string forms = "2026-05-02, 08:15, 2026-05-02 08:15 +10:00, 2026-W18";
        return meant is null
            ? new LineFinding(Check, span, $"{Shown.Of(typed)} isn't a date or time as files write it. The forms are {forms}.")
            : new LineFinding(Check, span, $"{Shown.Of(typed)} is written {Shown.Of(meant)}.", [new LineFix($"Write {meant}", span, meant)]);
    }
}
