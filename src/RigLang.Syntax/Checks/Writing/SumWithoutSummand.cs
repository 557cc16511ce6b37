namespace RigLang.Syntax.Checks.Writing;

public static class SumWithoutSummand
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL121",
        Slug = "sum-without-summand",
        Severity = Severity.Error,
        Summary = "`+` or `-` has no quantity on one of its sides.",
        Why = "What should be added or taken off isn't there, so the sum would be short.",
        Bad = "load autumn\n    on vehicle\n        item children 35 kg + at 2.35 m behind front-axle\n",
        Good = "load autumn\n    on vehicle\n        item children 35 kg + 30 kg at 2.35 m behind front-axle\n",
        Fix = "Write a quantity with its unit on both sides, or take the sign out.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan sign, string text) => new(Check, sign, $"{Shown.Of(text)} stands between two quantities, each with its unit: 35 kg + 30 kg.");
}
