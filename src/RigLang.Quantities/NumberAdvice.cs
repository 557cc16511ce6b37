using System.Buffers;
using System.Globalization;
using System.Text;

namespace RigLang.Quantities;

/// <summary>The slow path: says what is wrong with a number and what to write.</summary>
internal static class NumberAdvice
{
    private const int MostEchoed = 40;
    private const int MostExpanded = 15;
    private static readonly SearchValues<char> WithCommas = SearchValues.Create("0123456789.,'’_");
    private static readonly SearchValues<char> WithPoints = SearchValues.Create("0123456789._");

    public static NumberProblem LeadingZero(ReadOnlySpan<char> text)
    {
        var fixedText = text.ToString().Replace(".", "0.");
        return new(NumberProblemKind.LeadingZero, false, $"a digit is missing before the point: write {Quoted(fixedText)}", [fixedText]);
    }

    public static NumberProblem ImproperFraction(ReadOnlySpan<char> text, double value) =>
        new(NumberProblemKind.ImproperFraction, true, $"the fraction in {Quoted(text)} is one or more", [DecimalText.Round(value, 4, trimmed: true)]);

    /// <param name="text">As written.</param>
    /// <param name="body">Without the sign.</param>
    /// <param name="wellFormed">The form is right; what it comes to is not finite.</param>
    public static NumberProblem Explain(ReadOnlySpan<char> text, ReadOnlySpan<char> body, bool wellFormed)
    {
        if (body.IsEmpty)
            return new(NumberProblemKind.Missing, true, "a number is missing", []);
        if (wellFormed)
        {
            return body.Contains('/') || body.Contains(':')
                ? new(NumberProblemKind.DividedByZero, true, $"{Quoted(text)} divides by zero", [])
                : new(NumberProblemKind.TooLarge, true, $"{Quoted(text)} is more than can be reckoned with", []);
        }

        if (text.Length <= MostEchoed)
        {
            if (body.ContainsAny(',', '\'', '’') && !body.ContainsAnyExcept(WithCommas))
                return Comma(text);
            if (body.IndexOfAny('e', 'E') > 0)
                return Exponent(text.ToString());
            if (OtherDigits(text) is { } ascii)
                return new(NumberProblemKind.Malformed, true, $"numbers are written with the digits 0 to 9: {Quoted(ascii)}", [ascii]);
            if (body[^1] == '.' && NumberReader.TryRead(text[..^1], out _, out _, out _))
                return new(NumberProblemKind.Malformed, true, $"nothing stands behind the point in {Quoted(text)}", [text[..^1].ToString()]);
            if (body.Count('.') > 1 && !body.ContainsAnyExcept(WithPoints))
                return Points(text);
        }

        return new(NumberProblemKind.Malformed, true, $"{Quoted(text)} is not a number: write it like `2.88`, `10_400` or, before in and ft, `2-5/16`", []);
    }

    private static NumberProblem Comma(ReadOnlySpan<char> text)
    {
        var written = text.ToString().Replace('\'', ',').Replace('’', ',');
        var lastComma = written.LastIndexOf(',');
        var bare = written.Replace(",", "");
        List<string> readings = [];
        // 1,5 · 1.234,5: the comma as a decimal point. With two commas it can only group.
        if (written.IndexOf(',') == lastComma && lastComma > written.LastIndexOf('.') && !text.ContainsAny('\'', '’'))
            readings.Add(written[..lastComma].Replace(".", "") + "." + written[(lastComma + 1)..]);
        // 1,500 · 1,500.25 · 1,234,567: the comma as a grouping.
        var whole = written.IndexOf('.') > lastComma ? written[..written.IndexOf('.')] : written;
        if (whole.IndexOf('.') < 0 && whole.Split(',') is [.. var groups] && groups[1..].All(group => group.Length == 3))
            readings.Add(Grouped(bare));
        readings.RemoveAll(reading => !NumberReader.TryRead(reading, out _, out _, out _));
        var quoted = Quoted(text);
        if (readings.Count == 1 && whole.Split(',') is [_, { Length: not 3 }] && written.IndexOf('.') < 0)
            return new(NumberProblemKind.Comma, true, $"a comma can mean two things: {quoted} is {Quoted(readings[0])} with a decimal point, or two numbers, each on a line of its own", readings);
        return new(
            NumberProblemKind.Comma,
            true,
            readings.Count switch
            {
                2 => $"a comma can mean two things: {quoted} is {Quoted(readings[0])} with a decimal point, or {Quoted(readings[1])} with its thousands grouped; write which",
                1 => $"numbers have no comma: {quoted} is written {Quoted(readings[0])}",
                _ => $"numbers have no comma, and a line holds one value: {quoted}",
            },
            readings);
    }

    private static NumberProblem Exponent(string text)
    {
        List<string> readings = [];
        if (double.TryParse(text.Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && Math.Abs(value) is 0 or (> 1e-12 and < 1e15))
            readings.Add(DecimalText.Round(value, MostExpanded, trimmed: true));
        return new(NumberProblemKind.Exponent, true, readings.Count == 0
            ? $"numbers have no exponent: write {Quoted(text)} out"
            : $"numbers have no exponent: write {Quoted(text)} as {Quoted(readings[0])}", readings);
    }

    private static NumberProblem Points(ReadOnlySpan<char> text)
    {
        var grouped = text.ToString().Replace('.', '_');
        return new(NumberProblemKind.Malformed, true, $"{Quoted(text)} has more than one point; thousands are grouped with `_`", [grouped]);
    }

    private static string Grouped(string digits)
    {
        var point = digits.IndexOf('.');
        var end = point < 0 ? digits.Length : point;
        var start = digits.Length > 0 && digits[0] is '-' or '−' or '+' ? 1 : 0;
        var grouped = new StringBuilder(digits);
        for (var at = end - 3; at > start && end - start > 4; at -= 3)
            grouped.Insert(at, '_');
        return grouped.ToString();
    }

    /// <summary>The same number in ASCII digits if it has digits of another script, else null.</summary>
    private static string? OtherDigits(ReadOnlySpan<char> text)
    {
        var ascii = new StringBuilder();
        var changed = false;
        foreach (var letter in text)
        {
            var digit = char.IsAscii(letter) ? -1 : CharUnicodeInfo.GetDecimalDigitValue(letter);
            changed |= digit >= 0;
            ascii.Append(digit >= 0 ? (char)('0' + digit) : letter);
        }

        var result = ascii.ToString();
        return changed && NumberReader.TryRead(result, out _, out _, out _) ? result : null;
    }

    private static string Quoted(ReadOnlySpan<char> text) => text.Length > MostEchoed ? $"`{text[..MostEchoed]}…`" : $"`{text}`";
}
