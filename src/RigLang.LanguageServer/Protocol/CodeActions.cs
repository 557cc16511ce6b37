using System.Text.Json.Serialization;

namespace RigLang.LanguageServer.Protocol;

internal sealed record CodeActionParams(TextDocumentIdentifier TextDocument, TextRange Range, CodeActionContext Context);

internal sealed record CodeActionContext(string[]? Only = null);

internal sealed record CodeAction(
    string Title, string Kind, WorkspaceEdit? Edit = null, Diagnostic[]? Diagnostics = null, bool? IsPreferred = null, CodeActionData? Data = null);

/// <summary>As much of an action as is needed to find it again.</summary>
internal sealed record CodeActionToResolve(string Title, string Kind, CodeActionData? Data = null);

/// <summary>Where an action was offered, and for which text.</summary>
internal sealed record CodeActionData(string Uri, int? Version, TextRange Range);

internal sealed record WorkspaceEdit(Dictionary<string, TextEdit[]>? Changes = null, TextDocumentEdit[]? DocumentChanges = null);

internal sealed record TextDocumentEdit(OptionalVersionedTextDocumentIdentifier TextDocument, TextEdit[] Edits);

/// <summary>The version is null, and written as null, for a document that isn't open.</summary>
internal sealed record OptionalVersionedTextDocumentIdentifier(
    string Uri, [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] int? Version);

internal static class CodeActionKind
{
    internal const string QuickFix = "quickfix";
    internal const string Rewrite = "refactor.rewrite";
    internal const string Extract = "refactor.extract";
    internal const string FixAll = "source.fixAll.riglang";
}
