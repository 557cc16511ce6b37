using System.Globalization;

namespace RigLang.Syntax.Scanning;

/// <summary>The classes of characters that the scanner tells apart. ASCII is answered without a table.</summary>
internal static class Characters
{
    /// <summary>Space, tab, and every other blank of Unicode (those are reported, but they do part atoms).</summary>
    public static bool IsBlank(char c) => c is ' ' or '\t' || (c > ' ' ? c >= '\u0085' && char.IsWhiteSpace(c) : char.IsWhiteSpace(c));

    public static bool IsDigit(char c) => char.IsAsciiDigit(c);

    public static bool IsPlus(char c) => c == '+';

    /// <summary>The hyphen, and the minus sign of typography.</summary>
    public static bool IsMinus(char c) => c is '-' or '\u2212';

    public static bool IsSign(char c) => IsPlus(c) || IsMinus(c);

    public static bool IsFootMark(char c) => c is '\'' or '\u2019' or '\u2032';

    public static bool IsInchMark(char c) => c is '"' or '\u201D' or '\u2033';

    public static bool IsBracket(char c) => c is '(' or ')' or '[' or ']' or '{' or '}';

    public static bool IsProductSign(char c) => c is '\u00B7' or '\u22C5' or '*';

    /// <summary>Characters that write left and right in an order of their own, or that cannot be seen at all.</summary>
    public static bool IsInvisible(char c) => c > '~' && char.GetUnicodeCategory(c) == UnicodeCategory.Format;

    /// <summary>Those of the invisible that make a line show something other than what it says.</summary>
    public static bool IsReordering(char c) => c is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069';

    /// <summary>A character that ends a word even without a blank.</summary>
    public static bool EndsWord(string text, int at)
    {
        var c = text[at];
        if (char.IsAsciiLetterOrDigit(c))
        {
            return false;
        }

        var next = at + 1 < text.Length ? text[at + 1] : '\0';
        return c switch
        {
            '"' or '<' or '>' or '=' or '\u2264' or '\u2265' or '\u00B1' or '?' or ',' or ';' => true,
            '+' => next == '-',
            '.' => next == '.',
            _ => IsBracket(c) || IsBlank(c),
        };
    }
}
