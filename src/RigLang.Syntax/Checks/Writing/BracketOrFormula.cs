namespace RigLang.Syntax.Checks.Writing;

public static class BracketOrFormula
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL134",
        Slug = "bracket-or-formula",
        Severity = Severity.Error,
        Summary = "A line has a bracket or a sign of arithmetic that it can't have.",
        Why = "A value is what was weighed or measured, or a plain sum of such. Formulas hide where a number came from.",
        Bad = "load autumn\n    on trailer\n        item gas 2 * 9 kg at coupling\n",
        Good = "load autumn\n    on trailer\n        item gas 2 x 9 kg at coupling\n",
        Fix = "Write the value, a sum (`75 lb + 60 lb`) or a count (`2 x 9 kg`). Notes go behind `#`.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, string typed) =>
        new(Check, span, $"{Shown.Of(typed)} has no meaning here: values are single quantities or plain sums such as 2 x 11 kg + 4 kg. A remark goes behind #.");

    internal static LineFinding OfTimes(TextSpan span) => new(Check, span, "Several of the same are counted with x: 2 x 9 kg.", [new LineFix("Write x", span, "x")]);
}
