using System.Globalization;
using System.Text;

namespace RigLang.Syntax.Checks;

/// <summary>Prepares what stands in a file for a message: short, and with nothing in it that cannot be seen.</summary>
internal static class Shown
{
    private const int Most = 40;

    public static string Of(ReadOnlySpan<char> text)
    {
        var shown = new StringBuilder(Math.Min(text.Length, Most) + 2);
        shown.Append('`');
        var read = 0;
        for (; read < text.Length && shown.Length <= Most; read++)
        {
            var rune = text[read];
            var hidden = char.IsControl(rune) || char.IsSurrogate(rune) || char.GetUnicodeCategory(rune) is UnicodeCategory.Format or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator or UnicodeCategory.OtherNotAssigned or UnicodeCategory.PrivateUse;
            if (hidden)
            {
                shown.Append(CultureInfo.InvariantCulture, $"U+{(int)rune:X4}");
            }
            else
            {
                shown.Append(rune);
            }
        }

        return shown.Append(read < text.Length ? "\u2026`" : "`").ToString();
    }
}
