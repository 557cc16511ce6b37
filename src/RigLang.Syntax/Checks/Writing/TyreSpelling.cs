namespace RigLang.Syntax.Checks.Writing;

public static class TyreSpelling
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL133",
        Slug = "tyre-spelling",
        Severity = Severity.Warning,
        Summary = "A tyre designation is written with a blank in its size, with brackets or in small letters.",
        Why = "It can be read, but search and comparison find one spelling only.",
        Bad = "vehicle van\n    axle front\n        tyres 245/55 r19 107w\n",
        Good = "vehicle van\n    axle front\n        tyres 245/55R19 107W\n",
        Fix = "Write the size as one word, letters large.",
    };

    internal static LineFinding Of(TextSpan span, string meant) => new(Check, span, $"Tyres are written as {Shown.Of(meant)}.", [new LineFix($"Write {meant}", span, meant)]);
}
