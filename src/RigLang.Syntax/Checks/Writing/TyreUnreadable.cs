namespace RigLang.Syntax.Checks.Writing;

public static class TyreUnreadable
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL132",
        Slug = "tyre-unreadable",
        Severity = Severity.Error,
        Summary = "A tyre's size, service description or marks can't be read.",
        Why = "The load that an axle's tyres bear comes from these figures; a wrong letter is a wrong load.",
        Bad = "vehicle van\n    axle front\n        tyres 245-55-19 107W\n",
        Good = "vehicle van\n    axle front\n        tyres 245/55R19 107W\n",
        Fix = "Copy the sidewall: size, then load index with speed symbol, then marks, as in `245/55R19 107W XL` or `LT275/70R18 125/122S E`.",
        CanBeAllowed = false,
    };

    internal static LineFinding OfSize(TextSpan span, string typed) =>
        new(Check, span, $"{Shown.Of(typed)} isn't a tyre size. Sizes look like 245/55R19, LT275/70R18, 195/70R15C or 31x10.5R15LT.");

    internal static LineFinding OfMissing(TextSpan keyword) =>
        new(Check, keyword, "Behind this word stands what the sidewall says, as in 245/55R19 107W XL.");

    internal static LineFinding OfMark(TextSpan span, string typed) =>
        new(Check, span, $"{Shown.Of(typed)} is neither a service description (107W, 104/102R) nor a mark (XL, HL, SL, B to G) of a tyre.");
}
