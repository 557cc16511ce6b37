using System.Globalization;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Scanning;

/// <summary>
/// A tyre size, letters large: metric (<c>245/55R19</c>, <c>LT275/70R18</c>, <c>195/70R15C</c>; <c>185R14C</c>, whose height the sidewall doesn't say) or by
/// diameter (<c>31x10.5R15LT</c>).
/// </summary>
internal ref struct TyreSizeReader
{
    private readonly ReadOnlySpan<char> text;
    private int at;

    private TyreSizeReader(ReadOnlySpan<char> text) => this.text = text;

    public static TyreSize? Read(string size)
    {
        var reader = new TyreSizeReader(size);
        return reader.ReadMetric() ?? new TyreSizeReader(size).ReadByDiameter();
    }

    /// <summary>The size as files write it: letters large, but a small x.</summary>
    public static string Canonical(string size) => size.ToUpperInvariant().Replace('X', 'x').Replace('\u00D7', 'x');

    public static bool BeginsWithPrefix(ReadOnlySpan<char> text)
    {
        var letters = text.IndexOfAnyInRange('0', '9');
        return letters is 1 or 2 && IsPrefix(text[..letters].ToString().ToUpperInvariant());
    }

    private static bool IsPrefix(string letters) => letters is "P" or "LT" or "ST" or "T";

    private TyreSize? ReadMetric()
    {
        var prefix = Letters();
        if (prefix.Length > 0 && !IsPrefix(prefix))
        {
            return null;
        }

        var width = Number(3, 3, decimals: false);
        double? aspect = null;
        if (Take('/'))
        {
            aspect = Number(2, 3, decimals: false);
            if (aspect is null)
            {
                return null;
            }
        }

        var construction = Construction();
        var rim = Number(2, 2, decimals: true);
        var suffix = Letters();
        return width is { } w && construction is not null && rim is { } r && suffix is "" or "C" or "LT" && at == text.Length
            ? new TyreSize(prefix, w, aspect, null, null, construction, r, suffix)
            : null;
    }

    private TyreSize? ReadByDiameter()
    {
        var diameter = Number(2, 2, decimals: true);
        if (!Take('X') && !Take('\u00D7'))
        {
            return null;
        }

        var width = Number(1, 2, decimals: true);
        var construction = Construction();
        var rim = Number(1, 2, decimals: true);
        var suffix = Letters();
        return diameter is { } d && width is { } w && construction is "R" or "-" && rim is { } r && suffix is "" or "LT" && at == text.Length
            ? new TyreSize("", null, null, d, w, construction, r, suffix)
            : null;
    }

    private string? Construction()
    {
        if (Take('-'))
        {
            return "-";
        }

        var letters = Letters();
        return letters is "R" or "ZR" or "D" or "B" ? letters : null;
    }

    private string Letters()
    {
        var from = at;
        while (at < text.Length && char.IsAsciiLetterUpper(text[at]) && text[at] != 'X')
        {
            at++;
        }

        return text[from..at].ToString();
    }

    private double? Number(int least, int most, bool decimals)
    {
        var from = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        if (at - from < least || at - from > most)
        {
            return null;
        }

        if (decimals && at + 1 < text.Length && text[at] == '.' && char.IsAsciiDigit(text[at + 1]))
        {
            at++;
            while (at < text.Length && char.IsAsciiDigit(text[at]))
            {
                at++;
            }
        }

        return double.Parse(text[from..at], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
    }

    private bool Take(char c)
    {
        if (at >= text.Length || text[at] != c)
        {
            return false;
        }

        at++;
        return true;
    }
}
