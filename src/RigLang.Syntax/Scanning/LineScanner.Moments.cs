using RigLang.Syntax.Checks.Writing;

namespace RigLang.Syntax.Scanning;

/// <content>Dates, times of day, offsets from universal time, weeks; and the other ways to write them, for which a fix is offered.</content>
internal sealed partial class LineScanner
{
    private const int LongestMoment = 32;

    private bool TryScanMoment()
    {
        if (IsOffset(at))
        {
            Add(AtomKind.Offset, 6);
            return true;
        }

        if (Characters.IsSign(text[at]))
        {
            return false;
        }

        var end = at;
        while (end < text.Length && end - at <= LongestMoment && (char.IsAsciiLetterOrDigit(text[end]) || text[end] is '-' or ':' or '.' or '/' or '+'))
        {
            end++;
        }

        var word = text.AsSpan(at, end - at);
        if (word.Length > LongestMoment || word.IndexOfAny("-:./") < 0)
        {
            return false;
        }

        var kind = KindOfMoment(word);
        if (kind is { } known)
        {
            Add(known, word.Length);
            return true;
        }

        if (Misspelling(word) is { } meant)
        {
            AddReported(end, DateUnreadable.Of(TextSpan.FromBounds(at, end), word.ToString(), meant.Length == 0 ? null : meant));
            return true;
        }

        return false;
    }

    private bool IsOffset(int from) => from + 6 <= text.Length && Characters.IsSign(text[from]) && IsClock(text.AsSpan(from + 1, 5))
        && (from + 6 == text.Length || Characters.EndsWord(text, from + 6));

    private static AtomKind? KindOfMoment(ReadOnlySpan<char> word) => word.Length switch
    {
        10 when IsDate(word) => AtomKind.Date,
        5 when IsClock(word) => AtomKind.Clock,
        8 when IsWeek(word) => AtomKind.YearWeek,
        _ => null,
    };

    private static bool IsDate(ReadOnlySpan<char> word) => Matches(word, "0000-00-00");

    private static bool IsClock(ReadOnlySpan<char> word) => Matches(word, "00:00");

    private static bool IsWeek(ReadOnlySpan<char> word) => Matches(word, "0000-W00");

    /// <summary>Compares with a form in which 0 stands for any digit.</summary>
    private static bool Matches(ReadOnlySpan<char> word, string form)
    {
        if (word.Length != form.Length)
        {
            return false;
        }

        for (var i = 0; i < form.Length; i++)
        {
            if (form[i] == '0' ? !Characters.IsDigit(word[i]) : word[i] != form[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// What was meant by a date or time in another form; empty if it looks like one but can be read in more than one way; null if it doesn't look like one.
    /// </summary>
    private string? Misspelling(ReadOnlySpan<char> word)
    {
        if (word.Length >= 16 && word[10] is 'T' or 't' && IsDate(word[..10]) && IsClock(word[11..16]))
        {
            var rest = word[16..];
            rest = rest.Length >= 3 && Matches(rest[..3], ":00") ? rest[3..] : rest;
            return rest.Length == 0 ? $"{word[..10]} {word[11..16]}"
                : rest is "Z" or "z" ? $"{word[..10]} {word[11..16]} +00:00"
                : rest.Length == 6 && Characters.IsSign(rest[0]) && IsClock(rest[1..]) ? $"{word[..10]} {word[11..16]} {rest}"
                : "";
        }

        if (Matches(word, "0:00"))
        {
            return word[0] == '1' && LastKind != AtomKind.Date ? null : $"0{word}"; // 1:16 is a slope
        }

        if (Matches(word, "0000-w00") || Matches(word, "0000W00") || Matches(word, "0000w00"))
        {
            return $"{word[..4]}-W{word[^2..]}";
        }

        if (Matches(word, "0000-W0") || Matches(word, "0000-w0"))
        {
            return $"{word[..4]}-W0{word[^1..]}";
        }

        return Matches(word, "00:00:00") ? word[..5].ToString() : MisspelledDate(word);
    }

    private static string? MisspelledDate(ReadOnlySpan<char> word)
    {
        Span<Range> parts = stackalloc Range[4];
        foreach (var separator in "-/.")
        {
            if (word.Split(parts, separator) != 3)
            {
                continue;
            }

            var first = word[parts[0]];
            var second = word[parts[1]];
            var third = word[parts[2]];
            if (!IsShort(second))
            {
                return null;
            }

            if (IsYear(first) && IsShort(third))
            {
                return $"{first}-{TwoDigits(second)}-{TwoDigits(third)}";
            }

            if (IsShort(first) && IsYear(third))
            {
                return separator == '.' ? $"{third}-{TwoDigits(second)}-{TwoDigits(first)}" : ""; // 10/3/2026 is two days, 3.10.2026 only one
            }
        }

        return null;
    }

    private static bool IsYear(ReadOnlySpan<char> part) => Matches(part, "0000");

    private static bool IsShort(ReadOnlySpan<char> part) => Matches(part, "0") || Matches(part, "00");

    private static string TwoDigits(ReadOnlySpan<char> part) => part.Length == 1 ? $"0{part}" : part.ToString();
}
