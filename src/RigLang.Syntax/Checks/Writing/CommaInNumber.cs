using System.Collections.Immutable;

namespace RigLang.Syntax.Checks.Writing;

public static class CommaInNumber
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL108",
        Slug = "comma-in-number",
        Severity = Severity.Error,
        Summary = "A number has a comma in it.",
        Why = "4,032 lb is four thousand pounds to one reader and four to another. A file must mean the same to both.",
        Bad = "vehicle van\n    gross-rating 4,032 lb\n",
        Good = "vehicle van\n    gross-rating 4_032 lb\n",
        Fix = "Write a decimal point, or group thousands with `_` (or not at all).",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, string number)
    {
        var comma = number.IndexOf(',', StringComparison.Ordinal);
        var oneComma = number.IndexOf(',', comma + 1) < 0;
        var point = number.IndexOf('.', StringComparison.Ordinal);
        var decimals = oneComma && IsReadable(number.Replace(".", "", StringComparison.Ordinal)) && point < comma
            ? number.Replace(".", "", StringComparison.Ordinal).Replace(',', '.')
            : null;
        var thousands = GroupsOfThree(point < 0 ? number : number[..point]) && (point < 0 || point > comma) ? number.Replace(',', '_') : null;

        var fixes = ImmutableArray.CreateBuilder<LineFix>(2);
        if (decimals is not null)
        {
            fixes.Add(new LineFix($"Decimal point: {decimals}", span, decimals));
        }

        if (thousands is not null)
        {
            fixes.Add(new LineFix($"Thousands: {thousands}", span, thousands));
        }

        var message = (decimals, thousands) switch
        {
            (not null, not null) => $"{Shown.Of(number)} can mean {decimals} or {thousands}: write the one that is meant.",
            (not null, null) => $"A number has a decimal point, no comma: write {decimals}. Two values go on two lines.",
            (null, not null) => $"Thousands aren't parted by commas: write {thousands}.",
            _ => $"{Shown.Of(number)} is no number: write a decimal point, or one value a line.",
        };
        return new LineFinding(Check, span, message, fixes.ToImmutable());
    }

    private static bool IsReadable(string number) => number.Length < 30 && number[^1] != ',';

    /// <summary>True for 1,234 and 12,345,678.</summary>
    private static bool GroupsOfThree(string number)
    {
        var groups = number.TrimStart('+', '-', '\u2212').Split(',');
        return number.Length < 30 && groups[0].Length is >= 1 and <= 3 && groups[0] != "0" && groups.Skip(1).All(group => group.Length == 3 && group.All(char.IsAsciiDigit));
    }
}
