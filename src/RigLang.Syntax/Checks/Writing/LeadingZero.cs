namespace RigLang.Syntax.Checks.Writing;

public static class LeadingZero
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL111",
        Slug = "leading-zero",
        Severity = Severity.Note,
        Summary = "A number begins with its decimal point.",
        Why = "A point alone is easily lost on a screen or a print, and .5 is then read as 5.",
        Bad = "vehicle van\n    ball-height .41 m\n",
        Good = "vehicle van\n    ball-height 0.41 m\n",
        Fix = "Write a zero before the point.",
        Source = "common practice in technical drawing and dosing",
    };

    internal static LineFinding Of(TextSpan number, int pointAt) =>
        new(Check, number, "Write a zero before the decimal point, so that the point isn't overlooked.", [new LineFix("Write 0 before the point", new TextSpan(pointAt, 0), "0")]);
}
