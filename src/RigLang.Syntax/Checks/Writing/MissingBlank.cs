namespace RigLang.Syntax.Checks.Writing;

public static class MissingBlank
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL114",
        Slug = "missing-blank",
        Severity = Severity.Warning,
        Summary = "Two things stand against each other without a blank.",
        Why = "Around `+`, `-` and `x`, and between values, a blank shows where one ends: `75 lb -60 lb` can be a difference or two values.",
        Bad = "load autumn\n    on vehicle\n        item children 75 lb+60 lb at 2.35 m behind front-axle\n",
        Good = "load autumn\n    on vehicle\n        item children 75 lb + 60 lb at 2.35 m behind front-axle\n",
        Fix = "Put a blank between.",
    };

    /// <param name="span">What stands too close.</param>
    /// <param name="spaced">The same with blanks.</param>
    internal static LineFinding Of(TextSpan span, string spaced) => new(Check, span, $"A blank is missing beside {Shown.Of(spaced.Trim())}.", [new LineFix("Put blanks in", span, spaced)]);

    internal static LineFinding Before(TextSpan span) => new(Check, span, "A blank is missing before this.", [new LineFix("Put a blank in", new TextSpan(span.Start, 0), " ")]);
}
