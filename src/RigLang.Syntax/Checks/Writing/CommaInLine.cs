namespace RigLang.Syntax.Checks.Writing;

public static class CommaInLine
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL109",
        Slug = "comma-in-line",
        Severity = Severity.Error,
        Summary = "A comma or a semicolon stands between words.",
        Why = "Words are parted by blanks, and a second fact has a line of its own; a comma has no meaning here.",
        Bad = "weighing may\n    pass solo\n        scale front, rear 2805 kg\n",
        Good = "weighing may\n    pass solo\n        scale front rear 2805 kg\n",
        Fix = "Take the comma out, or write the second fact on a line of its own.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, bool needsBlank) =>
        new(Check, span, "There are no commas between words: leave a blank, or write the second fact on a line of its own.", [new LineFix("Take it out", span, needsBlank ? " " : "")]);
}
