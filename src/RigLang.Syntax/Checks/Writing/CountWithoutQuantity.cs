namespace RigLang.Syntax.Checks.Writing;

public static class CountWithoutQuantity
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL120",
        Slug = "count-without-quantity",
        Severity = Severity.Error,
        Summary = "`x` has no quantity behind it.",
        Why = "`2 x 9 kg` is two things of nine kilograms each; without the quantity nothing is counted.",
        Bad = "load autumn\n    on trailer\n        item gas 2 x\n",
        Good = "load autumn\n    on trailer\n        item gas 2 x 9 kg at coupling\n",
        Fix = "Write the quantity of one behind the `x`.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan sign) => new(Check, sign, "Behind x stands what one of them weighs or measures, as in 2 x 9 kg.");
}
