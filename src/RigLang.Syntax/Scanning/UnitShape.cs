using System.Globalization;

namespace RigLang.Syntax.Scanning;

/// <summary>
/// What a unit can look like, whatever units there are: <c>km/h</c>, <c>N·m</c>, <c>kg*m2</c>, <c>us-gal</c>, <c>L/100km</c>, <c>°C</c>, <c>%</c>, <c>EUR/L</c>.
/// </summary>
internal static class UnitShape
{
    /// <summary>Where the unit that begins at <paramref name="start"/> ends; <paramref name="start"/> itself if none begins there.</summary>
    public static int EndOf(string text, int start, int end)
    {
        var at = EndOfFactor(text, start, end);
        while (at > start && at + 1 < end && (text[at] == '/' || Characters.IsProductSign(text[at])))
        {
            var next = at + 1;
            while (next < end && Characters.IsDigit(text[next])) // the 100 of L/100km
            {
                next++;
            }

            var behind = EndOfFactor(text, next, end);
            if (behind == next)
            {
                break;
            }

            at = behind;
        }

        return at;
    }

    private static int EndOfFactor(string text, int start, int end)
    {
        var at = start;
        if (at < end && IsMark(text[at]))
        {
            at++;
            while (at < end && char.IsLetter(text[at])) // °C
            {
                at++;
            }
        }
        else
        {
            while (at < end && (char.IsLetter(text[at]) || (text[at] == '-' && at > start && at + 1 < end && char.IsLetter(text[at + 1]))))
            {
                at++;
            }
        }

        return at == start ? start : EndOfPower(text, at, end);
    }

    private static int EndOfPower(string text, int at, int end)
    {
        if (at == end)
        {
            return at;
        }

        switch (text[at])
        {
            case '\u00B2' or '\u00B3':
                return at + 1;
            case '^' when at + 1 < end && text[at + 1] is '2' or '3':
                return at + 2;
            case '2' or '3' when at + 1 == end || !GoesOnAsNumber(text, at + 1, end):
                return at + 1;
            default:
                return at;
        }
    }

    /// <summary>Tells the power of <c>m2</c> from the number of <c>5ft2in</c>, <c>5ft3.5in</c> and <c>5ft3-1/2in</c>.</summary>
    private static bool GoesOnAsNumber(string text, int at, int end)
    {
        var c = text[at];
        var digitNext = at + 1 < end && Characters.IsDigit(text[at + 1]);
        return char.IsLetterOrDigit(c) || c == '_' || (c is '.' or '-' or '/' && digitNext);
    }

    private static bool IsMark(char c) => c is '%' or '\u00B0' or '\u2030' || (c is '$' or > '~' && char.GetUnicodeCategory(c) == UnicodeCategory.CurrencySymbol);
}
