using System.Text.Json.Serialization;

namespace RigLang.LanguageServer.Protocol;

internal sealed record CodeActionParams(TextDocumentIdentifier TextDocument, TextRange Range, CodeActionContext Context);

internal sealed record CodeActionContext(string[]? Only = null);

internal sealed record CodeAction(string Title, string Kind, WorkspaceEdit Edit, Diagnostic[]? Diagnostics = null, bool? IsPreferred = null);

internal sealed record WorkspaceEdit(Dictionary<string, TextEdit[]>? Changes = null, TextDocumentEdit[]? DocumentChanges = null);

internal sealed record TextDocumentEdit(OptionalVersionedTextDocumentIdentifier TextDocument, TextEdit[] Edits);

/// <summary>The version is null, and written as null, for a document that isn't open.</summary>
internal sealed record OptionalVersionedTextDocumentIdentifier(
    string Uri, [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] int? Version);

internal static class CodeActionKind
{
    internal const string QuickFix = "quickfix";
    internal const string Refactor = "refactor";
}
