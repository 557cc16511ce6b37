namespace RigLang.LanguageServer.Documents;

/// <summary>The URI of a virtual document with a report: <c>riglang-report:/rig%20coast.md?file%3A%2F%2F%2Fw%2Fa.rig</c>. The document's own URI is the query, the last part of the path is for people.</summary>
internal static class ReportUri
{
    internal const string Scheme = "riglang-report";

    /// <summary>What stands in place of a declaration where the report is about the whole file.</summary>
    private const string Whole = "report";

    internal static string Of(string documentUri, string? subject) => $"{Scheme}:/{Uri.EscapeDataString(subject ?? Whole)}.md?{Uri.EscapeDataString(documentUri)}";

    /// <summary>Null for a URI that is none of a report.</summary>
    internal static (string DocumentUri, string? Subject)? Read(string uri)
    {
        var query = uri.IndexOf('?', StringComparison.Ordinal);
        if (query < 0 || !uri.StartsWith(Scheme + ":", StringComparison.OrdinalIgnoreCase))
        {
            return null;
        }

        var name = Uri.UnescapeDataString(uri[(Scheme.Length + 1)..query]).TrimStart('/');
        var subject = name.EndsWith(".md", StringComparison.Ordinal) ? name[..^3] : name;
        return (Uri.UnescapeDataString(uri[(query + 1)..]), subject == Whole ? null : subject);
    }
}
