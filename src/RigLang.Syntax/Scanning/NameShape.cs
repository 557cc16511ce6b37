using System.Globalization;
using System.Text;

namespace RigLang.Syntax.Scanning;

/// <summary>Whether a word has the form of a name: lower-case letters of any script and digits, joined by single hyphens, a letter first.</summary>
internal static class NameShape
{
    public static bool IsName(ReadOnlySpan<char> word)
    {
        var expectsLetter = true; // at the start
        var expectsMore = true; // at the start and behind a hyphen
        for (var i = 0; i < word.Length; i++)
        {
            var c = word[i];
            if (char.IsAsciiLetterLower(c))
            {
                expectsLetter = expectsMore = false;
            }
            else if (char.IsAsciiDigit(c) && !expectsLetter)
            {
                expectsMore = false;
            }
            else if (c == '-' && !expectsMore)
            {
                expectsMore = true;
            }
            else if (c > '~')
            {
                if (Rune.DecodeFromUtf16(word[i..], out var rune, out var length) != System.Buffers.OperationStatus.Done || !Fits(rune, expectsLetter, expectsMore))
                {
                    return false;
                }

                expectsLetter = expectsMore = false;
                i += length - 1;
            }
            else
            {
                return false;
            }
        }

        return !expectsMore;
    }

    /// <summary>The name that was probably meant, or null: small letters, and a hyphen for whatever else stands between.</summary>
    public static string? Mend(ReadOnlySpan<char> word)
    {
        var name = new StringBuilder(word.Length);
        var pendingHyphen = false;
        foreach (var rune in word.EnumerateRunes())
        {
            var lower = Rune.ToLowerInvariant(rune);
            if (Fits(lower, name.Length == 0, false))
            {
                if (pendingHyphen && name.Length > 0)
                {
                    name.Append('-');
                }

                pendingHyphen = false;
                name.Append(lower.ToString());
            }
            else if (Rune.GetUnicodeCategory(rune) != UnicodeCategory.Format)
            {
                pendingHyphen = true;
            }
        }

        var mended = Names.Compose(name.ToString());
        return IsName(mended) ? mended : null;
    }

    private static bool Fits(Rune rune, bool first, bool behindHyphen) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.LowercaseLetter or UnicodeCategory.OtherLetter or UnicodeCategory.ModifierLetter => true,
        UnicodeCategory.DecimalDigitNumber => !first,
        UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark => !first && !behindHyphen,
        _ => false,
    };
}
