using System.Globalization;

namespace RigLang.Syntax.Checks.Writing;

public static class ExponentNumber
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL110",
        Slug = "exponent-number",
        Severity = Severity.Error,
        Summary = "A number is written with an exponent.",
        Why = "A file is made to be read aloud at the weighbridge; a prefix in the unit says the same and is harder to misread.",
        Bad = "vehicle van\n    gross-rating 2.95e3 kg\n",
        Good = "vehicle van\n    gross-rating 2950 kg\n",
        Fix = "Write the digits out, or take a larger or smaller unit.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, string number)
    {
        var plain = WriteOut(number);
        return plain is null
            ? new LineFinding(Check, span, $"{Shown.Of(number)} has an exponent: write the digits out, or take another unit.")
            : new LineFinding(Check, span, $"{Shown.Of(number)} has an exponent: write {plain}, or take another unit.", [new LineFix($"Write {plain}", span, plain)]);
    }

    /// <summary>Moves the point by the exponent, digit by digit; null where that gives no handy number.</summary>
    private static string? WriteOut(string number)
    {
        var mark = number.IndexOfAny(['e', 'E']);
        if (mark < 1 || number.Length - mark is < 2 or > 4 || mark > 20)
        {
            return null;
        }

        var sign = number[0] is '-' or '\u2212' ? "-" : "";
        var digits = number[..mark].TrimStart('+', '-', '\u2212').Replace("_", "", StringComparison.Ordinal);
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var whole = point < 0 ? digits.Length : point;
        digits = digits.Replace(".", "", StringComparison.Ordinal);
        if (!int.TryParse(number[(mark + 1)..].Replace('\u2212', '-'), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var power) || power < -9 || power > 15 || digits.Length == 0)
        {
            return null;
        }

        whole += power;
        digits = whole <= 0 ? new string('0', 1 - whole) + digits : digits;
        whole = Math.Max(whole, 1);
        digits = digits.PadRight(whole, '0');
        var left = digits[..whole].TrimStart('0');
        var right = digits[whole..];
        return sign + (left.Length == 0 ? "0" : left) + (right.Length == 0 ? "" : "." + right);
    }
}
