using System.Text.RegularExpressions;
using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Translate;

/// <summary>Markdown for clients that show it, the same words without the signs for those that don't.</summary>
internal static partial class Markup
{
    internal static MarkupContent Of(string markdown, bool clientShowsMarkdown) =>
        clientShowsMarkdown ? new MarkupContent("markdown", markdown) : new MarkupContent("plaintext", Plain(markdown));

    internal static string Plain(string markdown)
    {
        var text = Fences().Replace(markdown, "");
        text = Links().Replace(text, "$1");
        text = Stress().Replace(text, "$2");
        return Headings().Replace(text, "").Trim();
    }

    [GeneratedRegex(@"^[ \t]*```.*\r?\n?", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Fences();

    [GeneratedRegex(@"\[([^\]\r\n]*)\]\([^)\r\n]*\)", RegexOptions.CultureInvariant)]
    private static partial Regex Links();

    [GeneratedRegex(@"(\*\*|`)([^*`\r\n]+)\1", RegexOptions.CultureInvariant)]
    private static partial Regex Stress();

    [GeneratedRegex(@"^#{1,6} ", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Headings();
}
