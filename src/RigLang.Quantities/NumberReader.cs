using System.Buffers;
using System.Globalization;

namespace RigLang.Quantities;

/// <summary>Reads a number as the language writes it, whatever the machine's locale: a point for decimals, "_" to group, fractions and 1:n; no comma, no exponent.</summary>
public static class NumberReader
{
    private const int ShortEnoughForTheStack = 128;

    /// <summary>Reads a number. A result of true with a problem means: read, but better written otherwise.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out double value, out NumberForm form, out NumberProblem? problem)
    {
        problem = null;
        form = default;
        value = 0;
        var sign = text.Length > 0 && text[0] is '-' or '−' ? -1 : 1;
        var body = text.Length > 0 && text[0] is '-' or '−' or '+' ? text[1..] : text;
        var read = body.StartsWith("1:") ? Slope(body[2..], ref value, ref form)
            : body.Contains('/') ? Fraction(body, ref value, ref form)
            : Decimal(body, ref value, ref form);
        if (!read || !double.IsFinite(value))
        {
            problem = NumberAdvice.Explain(text, body, read);
            value = 0;
            return false;
        }

        if (body[0] == '.')
            problem = NumberAdvice.LeadingZero(text);
        else if (form.Shape == NumberShape.Fraction && body.Contains('-') && Math.Floor(value) != WholePart(body))
            problem = NumberAdvice.ImproperFraction(text, value);
        var failed = problem is { IsError: true };
        value = failed || value == 0 ? 0 : sign * value; // no minus zero
        return !failed;
    }

    private static bool Slope(ReadOnlySpan<char> digits, ref double value, ref NumberForm form)
    {
        if (!Digits(digits, out var run))
            return false;
        form = new(NumberShape.Slope, 0, Significant(digits));
        value = 1 / run;
        return true;
    }

    private static bool Fraction(ReadOnlySpan<char> text, ref double value, ref NumberForm form)
    {
        var stroke = text.IndexOf('/');
        var hyphen = text.IndexOf('-');
        var whole = 0.0;
        if (hyphen > stroke || (hyphen >= 0 && !Digits(text[..hyphen], out whole)))
            return false;
        if (!Digits(text[(hyphen + 1)..stroke], out var over) || !Digits(text[(stroke + 1)..], out var under))
            return false;
        value = whole + over / under;
        var decimals = double.IsFinite(value) ? Math.Clamp((int)Math.Ceiling(Math.Log10(4 * under)), 1, 6) : 0;
        form = new(NumberShape.Fraction, decimals, value == 0 ? 1 : Math.Max(1, decimals + 1 + (int)Math.Floor(Math.Log10(value))));
        return true;
    }

    private static double WholePart(ReadOnlySpan<char> fraction) => Digits(fraction[..fraction.IndexOf('-')], out var whole) ? whole : 0;

    private static bool Decimal(ReadOnlySpan<char> text, ref double value, ref NumberForm form)
    {
        var point = text.IndexOf('.');
        var whole = point < 0 ? text : text[..point];
        var part = point < 0 ? default : text[(point + 1)..];
        if ((whole.IsEmpty && point < 0) || (!whole.IsEmpty && !AreDigits(whole)) || (point >= 0 && !AreDigits(part)))
            return false;
        value = Parse(text);
        form = new(NumberShape.Decimal, part.Length - part.Count('_'), Significant(text));
        return true;
    }

    private static bool Digits(ReadOnlySpan<char> text, out double value)
    {
        var are = AreDigits(text);
        value = are ? Parse(text) : 0;
        return are;
    }

    /// <summary>A digit, then digits and underscores. (Plain loops here: numbers are short, and searching by vectors costs a just-in-time compiler 20 ms at the start.)</summary>
    private static bool AreDigits(ReadOnlySpan<char> text)
    {
        foreach (var letter in text)
        {
            if (!char.IsAsciiDigit(letter) && letter != '_')
                return false;
        }

        return !text.IsEmpty && text[0] != '_';
    }

    private static double Parse(ReadOnlySpan<char> text)
    {
        if (!text.Contains('_'))
            return Invariant(text);
        var rented = text.Length > ShortEnoughForTheStack ? ArrayPool<char>.Shared.Rent(text.Length) : null;
        Span<char> clean = rented ?? stackalloc char[ShortEnoughForTheStack];
        var length = 0;
        foreach (var letter in text)
        {
            if (letter != '_')
                clean[length++] = letter;
        }

        var value = Invariant(clean[..length]);
        if (rented is not null)
            ArrayPool<char>.Shared.Return(rented);
        return value;
    }

    // Digits and at most one point: correctly rounded, and infinite when there are too many digits.
    private static double Invariant(ReadOnlySpan<char> text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : double.NaN;

    private static int Significant(ReadOnlySpan<char> text)
    {
        var digits = 0;
        foreach (var letter in text)
        {
            if (char.IsAsciiDigit(letter) && (digits > 0 || letter != '0'))
                digits++;
        }

        return Math.Max(1, digits);
    }
}
