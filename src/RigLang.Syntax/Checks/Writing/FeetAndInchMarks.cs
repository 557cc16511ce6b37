namespace RigLang.Syntax.Checks.Writing;

public static class FeetAndInchMarks
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL113",
        Slug = "feet-and-inch-marks",
        Severity = Severity.Error,
        Summary = "Feet and inches are written with quote marks.",
        Why = "Quotes hold text, and the same marks mean minutes and seconds; a lost one turns feet into inches.",
        Bad = "trailer longroom\n    height 10' 9\"\n",
        Good = "trailer longroom\n    height 10 ft 9 in\n",
        Fix = "Write `ft` and `in`.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, string? feet, string? inches)
    {
        var written = (feet is null ? "" : feet + " ft") + (feet is null || inches is null ? "" : " ") + (inches is null ? "" : inches + " in");
        return new LineFinding(Check, span, $"Feet and inches are written with their units: {written}.", [new LineFix($"Write {written}", span, written)]);
    }
}
