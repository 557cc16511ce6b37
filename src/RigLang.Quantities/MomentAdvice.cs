using System.Diagnostics.CodeAnalysis;

namespace RigLang.Quantities;

/// <summary>The slow path: what to write for a date or time in another form, if that can be told.</summary>
internal static class MomentAdvice
{
    public static bool Date(ReadOnlySpan<char> text, [NotNullWhen(false)] out MomentProblem? problem)
    {
        var parts = Numbers(text, "-/.");
        if (parts is [{ Length: 4 } year, { Length: <= 2 } month, { Length: <= 2 } day])
            return Suggest(text, "a date", $"{year}-{month.PadLeft(2, '0')}-{day.PadLeft(2, '0')}", out problem);
        if (parts is [{ Length: <= 2 } first, { Length: <= 2 } second, { Length: 4 } last])
            return BothOrders(text, last, first.PadLeft(2, '0'), second.PadLeft(2, '0'), out problem);
        return MomentReader.Refuse(text.IsEmpty ? "a date is missing: write it like 2026-10-03" : $"`{MomentReader.Short(text)}` is not a date: write year, month and day like 2026-10-03", out problem);
    }

    public static bool Clock(ReadOnlySpan<char> text, [NotNullWhen(false)] out MomentProblem? problem)
    {
        var parts = Numbers(text, ":.hH");
        return parts is [{ Length: <= 2 } hour, { Length: 2 } minute]
            ? Suggest(text, "a clock time", $"{hour.PadLeft(2, '0')}:{minute}", out problem)
            : MomentReader.Refuse(text.IsEmpty ? "a clock time is missing: write it like 08:15" : $"`{MomentReader.Short(text)}` is not a clock time: write it like 08:15, from 00:00 to 23:59", out problem);
    }

    public static bool Offset(ReadOnlySpan<char> text, [NotNullWhen(false)] out MomentProblem? problem)
    {
        if (text is "Z" or "z" or "UTC" or "GMT")
            return Suggest(text, "an offset", "+00:00", out problem);
        var sign = text.Length > 0 && text[0] is '-' or '−' ? "-" : "+";
        var digits = text.Length > 0 && text[0] is '-' or '−' or '+' ? text[1..].ToString() : "";
        var fixedText = digits.Length is 1 or 2 && digits.All(char.IsAsciiDigit) ? $"{sign}{digits.PadLeft(2, '0')}:00"
            : digits.Length == 4 && digits.All(char.IsAsciiDigit) ? $"{sign}{digits[..2]}:{digits[2..]}"
            : Numbers(digits, ":.") is [{ Length: 1 or 2 } hour, { Length: 2 } minute] ? $"{sign}{hour.PadLeft(2, '0')}:{minute}"
            : "";
        return fixedText.Length > 0
            ? Suggest(text, "an offset", fixedText, out problem)
            : MomentReader.Refuse($"`{MomentReader.Short(text)}` is not an offset from UTC: write it like +10:00", out problem);
    }

    public static bool YearWeek(ReadOnlySpan<char> text, [NotNullWhen(false)] out MomentProblem? problem)
    {
        // The sidewall's own form: week, then the last two figures of the year (four figures since 2000).
        if (text.Length == 4 && MomentReader.IsShaped(text, "dddd"))
            return Suggest(text, "a week", $"20{text[2..]}-W{text[..2]}", out problem);
        var plain = text.ToString().Replace("w", "W").Replace("-W", "W").Replace("W-", "W");
        if (plain.Split('W') is [{ Length: 4 } year, { Length: 1 or 2 } week] && (year + week).All(char.IsAsciiDigit))
            return Suggest(text, "a week", $"{year}-W{week.PadLeft(2, '0')}", out problem);
        return MomentReader.Refuse($"`{MomentReader.Short(text)}` is not a week: write year and week like 2024-W18 (on the sidewall 1824)", out problem);
    }

    private static bool BothOrders(ReadOnlySpan<char> text, string year, string first, string second, [NotNullWhen(false)] out MomentProblem? problem)
    {
        string[] readings = [$"{year}-{second}-{first}", $"{year}-{first}-{second}"];
        string[] valid = [.. readings.Distinct().Where(reading => MomentReader.TryReadDate(reading, out _, out _))];
        return valid.Length == 2
            ? MomentReader.Refuse($"`{MomentReader.Short(text)}` can be two dates: write `{valid[0]}` or `{valid[1]}`", out problem, valid)
            : valid.Length == 1
                ? Suggest(text, "a date", valid[0], out problem)
                : MomentReader.Refuse($"`{MomentReader.Short(text)}` is not a date: write year, month and day like 2026-10-03", out problem);
    }

    /// <summary>Better is in the right form already; it is read once more, since there may be no such month.</summary>
    private static bool Suggest(ReadOnlySpan<char> text, string what, string better, [NotNullWhen(false)] out MomentProblem? problem)
    {
        MomentProblem? inner;
        _ = what switch
        {
            "a date" => MomentReader.TryReadDate(better, out _, out inner),
            "a clock time" => MomentReader.TryReadClock(better, out _, out inner),
            "an offset" => MomentReader.TryReadOffset(better, out _, out inner),
            _ => MomentReader.TryReadYearWeek(better, out _, out inner),
        };
        problem = inner ?? new($"{what} is written `{better}`, not `{MomentReader.Short(text)}`", [better]);
        return false;
    }

    /// <summary>The groups of digits between single separators; empty if there is anything else.</summary>
    private static string[] Numbers(ReadOnlySpan<char> text, string separators)
    {
        if (text.Length > 16)
            return [];
        var parts = text.ToString().Split(separators.ToCharArray());
        return parts.All(part => part.Length > 0 && part.All(char.IsAsciiDigit)) ? parts : [];
    }
}
