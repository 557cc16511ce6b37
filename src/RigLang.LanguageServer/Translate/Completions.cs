using System.Text.RegularExpressions;
using RigLang.Editing;
using RigLang.LanguageServer.Client;
using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Translate;

/// <summary>Completions. Only those kinds are used that every client knows (1 to 18), so the icons need no negotiation.</summary>
internal static partial class Completions
{
    private const int PlainText = 1;
    private const int Snippet = 2;

    internal static CompletionItem ToProtocol(CompletionEntry entry, ClientFeatures client)
    {
        var edit = Places.ToProtocol(entry.Edit);
        var snippet = entry.IsSnippet && client.Snippets;
        return new CompletionItem(
            entry.Label,
            Kind(entry.Sort),
            snippet ? Snippet : PlainText,
            entry.IsSnippet && !client.Snippets ? edit with { NewText = WithoutStops(edit.NewText) } : edit,
            entry.Detail.Length > 0 ? entry.Detail : null,
            entry.Documentation.Length > 0 ? Markup.Of(entry.Documentation, client.MarkdownCompletion) : null,
            entry.SortKey.Length > 0 ? entry.SortKey : null);
    }

    /// <summary>The text of a snippet for a client without tab stops: the placeholders' own words, the first of several choices.</summary>
    internal static string WithoutStops(string snippet)
    {
        var text = Choices().Replace(snippet, "$1");
        text = Placeholders().Replace(text, "$1");
        return Escapes().Replace(Stops().Replace(text, ""), "$1");
    }

    private static int Kind(CompletionSort sort) => sort switch
    {
        CompletionSort.Declaration => 7, // Class
        CompletionSort.Fact => 10, // Property
        CompletionSort.Block => 9, // Module
        CompletionSort.Choice => 13, // Enum
        CompletionSort.Name => 18, // Reference
        CompletionSort.Unit => 11, // Unit
        CompletionSort.Value => 12, // Value
        CompletionSort.Result => 5, // Field
        CompletionSort.Check => 14, // Keyword
        CompletionSort.File => 17, // File
        _ => 1, // Text
    };

    [GeneratedRegex(@"(?<!\\)\$\{\d+\|([^,|}]*)[^}]*\}", RegexOptions.CultureInvariant)]
    private static partial Regex Choices();

    [GeneratedRegex(@"(?<!\\)\$\{\d+:([^}]*)\}", RegexOptions.CultureInvariant)]
    private static partial Regex Placeholders();

    [GeneratedRegex(@"(?<!\\)\$(?:\d+|\{\d+\})", RegexOptions.CultureInvariant)]
    private static partial Regex Stops();

    [GeneratedRegex(@"\\([$}\\])", RegexOptions.CultureInvariant)]
    private static partial Regex Escapes();
}
