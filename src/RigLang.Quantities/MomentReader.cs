using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace RigLang.Quantities;

/// <summary>What is wrong with a date, a clock time, an offset or a week.</summary>
/// <param name="Message">One sentence or two, without the place.</param>
/// <param name="Suggestions">Texts to write in its place, best first; may be empty.</param>
public sealed record MomentProblem(string Message, IReadOnlyList<string> Suggestions);

/// <summary>Reads dates and times of ISO 8601: 2026-10-03, 08:15, +10:00, 2024-W18.</summary>
public static class MomentReader
{
    private const int FirstYear = 1900;
    private const int LastYear = 2199;
    private const int LeastOffset = -12 * 60;
    private const int MostOffset = 14 * 60;

    /// <summary>Reads a date with, if they follow after one blank each, a clock time and an offset.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out Moment moment, [NotNullWhen(false)] out MomentProblem? problem)
    {
        moment = default;
        var words = text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length > 3)
            return Refuse($"after date, clock and offset nothing more is wanted: `{Short(words[3])}`", out problem);
        if (!TryReadDate(words.Length > 0 ? words[0] : "", out var date, out problem))
            return false;
        TimeOnly? clock = null;
        TimeSpan? offset = null;
        if (words.Length > 1)
        {
            if (!TryReadClock(words[1], out var read, out problem))
                return false;
            clock = read;
        }

        if (words.Length > 2)
        {
            if (!TryReadOffset(words[2], out var read, out problem))
                return false;
            offset = read;
        }

        moment = new(date, clock, offset);
        return true;
    }

    /// <summary>Reads "2026-10-03".</summary>
    public static bool TryReadDate(ReadOnlySpan<char> text, out DateOnly date, [NotNullWhen(false)] out MomentProblem? problem)
    {
        date = default;
        if (!IsShaped(text, "dddd-dd-dd"))
            return MomentAdvice.Date(text, out problem);
        var (year, month, day) = (Number(text[..4]), Number(text[5..7]), Number(text[8..]));
        if (year is < FirstYear or > LastYear)
            return Refuse($"the year {text[..4]} is not one of {FirstYear} to {LastYear}", out problem);
        if (month is < 1 or > 12)
            return Refuse($"there is no month {text[5..7]}", out problem, month is > 12 and <= 31 && day is >= 1 and <= 12 ? [$"{text[..4]}-{text[8..]}-{text[5..7]}"] : []);
        var days = DateTime.DaysInMonth(year, month);
        if (day < 1 || day > days)
            return Refuse($"{MonthName(month)} {year} has {days} days, there is no day {text[8..]}", out problem);
        date = new(year, month, day);
        problem = null;
        return true;
    }

    /// <summary>Reads "08:15".</summary>
    public static bool TryReadClock(ReadOnlySpan<char> text, out TimeOnly clock, [NotNullWhen(false)] out MomentProblem? problem)
    {
        clock = default;
        if (!IsShaped(text, "dd:dd"))
            return MomentAdvice.Clock(text, out problem);
        var (hour, minute) = (Number(text[..2]), Number(text[3..]));
        if (hour == 24 && minute == 0)
            return Refuse("the day ends at 24:00: write 00:00 of the next day", out problem);
        if (hour > 23)
            return Refuse($"there is no hour {text[..2]}", out problem);
        if (minute > 59)
            return Refuse($"there is no minute {text[3..]}", out problem);
        clock = new(hour, minute);
        problem = null;
        return true;
    }

    /// <summary>Reads "+10:00", from -12:00 to +14:00, the offsets in use on earth.</summary>
    public static bool TryReadOffset(ReadOnlySpan<char> text, out TimeSpan offset, [NotNullWhen(false)] out MomentProblem? problem)
    {
        offset = default;
        if (!IsShaped(text, "sdd:dd"))
            return MomentAdvice.Offset(text, out problem);
        var minutes = Number(text[4..]);
        var total = (text[0] == '+' ? 1 : -1) * ((Number(text[1..3]) * 60) + minutes);
        if (minutes > 59 || total is < LeastOffset or > MostOffset)
            return Refuse($"no place has the offset {text}: they go from -12:00 to +14:00", out problem);
        offset = TimeSpan.FromMinutes(total);
        problem = null;
        return true;
    }

    /// <summary>Reads "2024-W18".</summary>
    public static bool TryReadYearWeek(ReadOnlySpan<char> text, out YearWeek week, [NotNullWhen(false)] out MomentProblem? problem)
    {
        week = default;
        if (!IsShaped(text, "dddd-Wdd"))
            return MomentAdvice.YearWeek(text, out problem);
        var (year, number) = (Number(text[..4]), Number(text[6..]));
        if (year is < FirstYear or > LastYear)
            return Refuse($"the year {text[..4]} is not one of {FirstYear} to {LastYear}", out problem);
        var weeks = ISOWeek.GetWeeksInYear(year);
        if (number < 1 || number > weeks)
            return Refuse($"{year} has the weeks 01 to {weeks}, there is no week {text[6..]}", out problem);
        week = new(year, number);
        problem = null;
        return true;
    }

    internal static bool Refuse(string message, out MomentProblem problem, string[]? suggestions = null)
    {
        problem = new(message, suggestions ?? []);
        return false;
    }

    internal static string Short(ReadOnlySpan<char> text) => text.Length > 24 ? $"{text[..24]}…" : text.ToString();

    /// <summary>d stands for a digit, s for a sign, everything else for itself.</summary>
    internal static bool IsShaped(ReadOnlySpan<char> text, string shape)
    {
        if (text.Length != shape.Length)
            return false;
        for (var at = 0; at < shape.Length; at++)
        {
            var fits = shape[at] switch
            {
                'd' => char.IsAsciiDigit(text[at]),
                's' => text[at] is '+' or '-' or '−',
                var sign => text[at] == sign,
            };
            if (!fits)
                return false;
        }

        return true;
    }

    private static int Number(ReadOnlySpan<char> digits)
    {
        var number = 0;
        foreach (var digit in digits)
            number = (number * 10) + (digit - '0');
        return number;
    }

    private static string MonthName(int month) =>
        "January February March April May June July August September October November December".Split(' ')[month - 1];
}
