namespace RigLang.Syntax.Checks.Writing;

public static class NameMalformed
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL125",
        Slug = "name-malformed",
        Severity = Severity.Error,
        Summary = "A word or a name has characters that none can have.",
        Why = "Names are letters of any script and digits, joined by single hyphens, a letter first. So they can stand anywhere without quotes.",
        Bad = "vehicle crew_cab\n    wheelbase 157 in\n",
        Good = "vehicle crew-cab\n    wheelbase 157 in\n",
        Fix = "Join the parts of a name by single hyphens and begin it with a letter.",
        CanBeAllowed = false,
    };

    internal const int LongestName = 100;

    internal static LineFinding OfLength(TextSpan span, ReadOnlySpan<char> typed) =>
        new(Check, span, $"{Shown.Of(typed)} is too long for a word or a name; {LongestName} letters are the most.");

    internal static LineFinding Of(TextSpan span, string typed, string? mended) => mended is null
        ? new LineFinding(Check, span, $"{Shown.Of(typed)} can't be a name: names are small letters and digits, joined by single hyphens, a letter first.")
        : new LineFinding(Check, span, $"A name is small letters and digits, joined by single hyphens, a letter first: {Shown.Of(mended)} instead of {Shown.Of(typed)}.",
            [new LineFix($"Write {mended}", span, mended)]);
}
