namespace RigLang.Syntax.Checks.Writing;

public static class UnitInPieces
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL115",
        Slug = "unit-in-pieces",
        Severity = Severity.Error,
        Summary = "A unit has a blank in it.",
        Why = "Behind a blank begins the next word of the fact, so `160 N m` would be 160 newtons and something called m.",
        Bad = "vehicle van\n    electric\n        motor-torque 560 N m\n",
        Good = "vehicle van\n    electric\n        motor-torque 560 N·m\n",
        Fix = "Write the unit as one word: `N·m` (or `N*m`), `km/h`.",
        CanBeAllowed = false,
    };

    /// <summary>True for two units that are known only as a product: the second can be no word of the fact.</summary>
    internal static bool IsProduct(string first, string second) => (first, second) switch
    {
        ("N" or "kN" or "kgf", "m" or "mm") => true,
        ("lbf" or "lb", "ft") => true,
        ("kg", "m2" or "m^2" or "m\u00B2") => true,
        ("W" or "kW" or "MW" or "A", "h") => true,
        _ => false,
    };

    internal static LineFinding Of(TextSpan span, string typed)
    {
        var joined = typed.Contains('/', StringComparison.Ordinal) || typed.Contains('*', StringComparison.Ordinal) || typed.Contains('\u00B7', StringComparison.Ordinal)
            ? string.Concat(typed.Where(c => !char.IsWhiteSpace(c)))
            : typed.EndsWith(" h", StringComparison.Ordinal) ? typed.Replace(" ", "", StringComparison.Ordinal) : string.Join('\u00B7', typed.Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries));
        return new LineFinding(Check, span, $"A unit is one word without blanks: {Shown.Of(joined)}.", [new LineFix($"Write {joined}", span, joined)]);
    }
}
