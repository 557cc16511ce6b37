using System.Text.Json;

namespace RigLang.LanguageServer.Protocol;

internal sealed record CodeLens(TextRange Range, Command? Command = null, CodeLensData? Data = null);

/// <summary>Which declaration of which file it is above.</summary>
internal sealed record CodeLensData(string Uri, string Subject);

/// <param name="Arguments">The document's URI, then the declaration: <c>rig coast</c>.</param>
internal sealed record Command(string Title, [property: System.Text.Json.Serialization.JsonPropertyName("command")] string Id, string[]? Arguments = null);

internal sealed record ExecuteCommandParams(string Command, JsonElement[]? Arguments = null);

internal sealed record TextDocumentContentParams(string Uri);

internal sealed record TextDocumentContentResult(string Text);

/// <summary>The request <c>riglang/report</c>: the report of a declaration (<c>rig coast</c>), or of the whole file.</summary>
internal sealed record ReportParams(TextDocumentIdentifier TextDocument, string? Subject = null);

/// <summary>The report, and the URI of a virtual document that holds it.</summary>
internal sealed record ReportResult(string Uri, string Text);

internal sealed record ShowDocumentParams(string Uri, bool TakeFocus);
