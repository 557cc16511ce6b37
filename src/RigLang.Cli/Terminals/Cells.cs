using System.Text;
using Spectre.Console.Rendering;

namespace RigLang.Cli.Terminals;

/// <summary>How text stands in the columns of a terminal.</summary>
internal static class Cells
{
    private const char Stand = '\uFFFD';
    private const char Tie = '\u00A0';

    /// <summary>The text with blanks at which no line is broken: a number stays with its unit. They are printed as plain ones.</summary>
    public static string Tied(string text) => text.Replace(' ', Tie);

    /// <summary>The number of columns: none for a combining mark, two for a wide character.</summary>
    public static int Width(string text) => Ascii.IsValid(text) ? text.Length : Math.Max(0, Segment.CellCount([new Segment(text)]));

    /// <summary>Spaces behind the text up to so many columns.</summary>
    public static string PadRight(string text, int width) => text + new string(' ', Math.Max(0, width - Width(text)));

    /// <summary>Spaces before the text up to so many columns.</summary>
    public static string PadLeft(string text, int width) => new string(' ', Math.Max(0, width - Width(text))) + text;

    /// <summary>The text with a replacement for everything that a terminal might obey instead of show.</summary>
    public static string Visible(string text)
    {
        if (!text.Any(static c => c == Tie || IsHidden(c)))
        {
            return text;
        }

        return string.Create(text.Length, text, static (shown, text) =>
        {
            for (var at = 0; at < text.Length; at++)
            {
                shown[at] = text[at] == Tie ? ' ' : IsHidden(text[at]) ? Stand : text[at];
            }
        });
    }

    /// <summary>Control characters, marks that turn the direction of text, and line separators.</summary>
    public static bool IsHidden(char c) => c < ' ' || (c > '~' && (char.IsControl(c) || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u2028' or '\u2029' or '\u200E' or '\u200F' or '\uFEFF'));
}
