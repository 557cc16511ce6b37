using System.Globalization;
using System.Text;

namespace RigLang.Quantities;

/// <summary>A double as decimal digits: rounded once, half away from zero, no exponent, no minus zero.</summary>
internal static class DecimalText
{
    // 2.5 lb through SI and back is 2.4999999999999996: fifteen digits are what a double holds for certain, so they are what is rounded.
    private const int CertainDigits = 15;

    public const int MostDecimals = 15;

    /// <param name="value">Finite.</param>
    /// <param name="decimals">Digits behind the point; negative rounds to tens, hundreds, …</param>
    /// <param name="trimmed">Leave out zeros at the end behind the point.</param>
    /// <param name="leastDecimals">Trimming stops here.</param>
    public static string Round(double value, int decimals, bool trimmed = false, int leastDecimals = 0)
    {
        decimals = Math.Clamp(decimals, -300, MostDecimals);
        Span<char> text = stackalloc char[32];
        Math.Abs(value).TryFormat(text, out var written, "E14", CultureInfo.InvariantCulture);
        Span<char> digits = stackalloc char[CertainDigits];
        digits[0] = text[0];
        text[2..(CertainDigits + 1)].CopyTo(digits[1..]);
        // 0.d1d2… × 10^point
        var point = 1 + int.Parse(text[(CertainDigits + 2)..written], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var kept = point + decimals;
        if (kept < CertainDigits)
            RoundOff(ref digits, ref point, kept);

        var result = new StringBuilder();
        if (value < 0 && digits.ContainsAnyExcept('0'))
            result.Append('-');
        for (var place = 0; place < Math.Max(point, 1); place++)
            result.Append(DigitAt(digits, place, point));
        if (decimals > 0)
        {
            result.Append('.');
            for (var place = 0; place < decimals; place++)
                result.Append(DigitAt(digits, point + place, point, behindPoint: true));
            if (trimmed)
                Trim(result, decimals - Math.Max(leastDecimals, 0));
        }

        return result.ToString();
    }

    private static void RoundOff(scoped ref Span<char> digits, scoped ref int point, int kept)
    {
        var up = kept >= 0 && digits[kept] >= '5';
        digits[Math.Max(kept, 0)..].Fill('0');
        if (!up)
            return;
        var place = kept - 1;
        while (place >= 0 && digits[place] == '9')
            digits[place--] = '0';
        if (place >= 0)
        {
            digits[place]++;
            return;
        }

        // 9.99 becomes 10.0, 0.6 becomes 1: one place more before the point.
        digits[1..].Fill('0');
        digits[0] = '1';
        point++;
    }

    private static char DigitAt(ReadOnlySpan<char> digits, int place, int point, bool behindPoint = false) =>
        place < 0 || place >= digits.Length || (!behindPoint && point < 1) ? '0' : digits[place];

    private static void Trim(StringBuilder text, int most)
    {
        var length = text.Length;
        while (most-- > 0 && text[length - 1] == '0')
            length--;
        text.Length = text[length - 1] == '.' ? length - 1 : length;
    }
}
