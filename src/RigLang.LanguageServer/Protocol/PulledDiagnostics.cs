namespace RigLang.LanguageServer.Protocol;

internal sealed record DocumentDiagnosticParams(TextDocumentIdentifier TextDocument, string? PreviousResultId = null);

internal sealed record WorkspaceDiagnosticParams(PreviousResultId[] PreviousResultIds);

internal sealed record PreviousResultId(string Uri, string Value);

/// <param name="Kind">"full", or "unchanged" and then without items.</param>
internal sealed record DocumentDiagnosticReport(string Kind, string ResultId, Diagnostic[]? Items = null);

internal sealed record WorkspaceDiagnosticReport(WorkspaceDocumentReport[] Items);

/// <summary>The version is null, and written as null, for a document that isn't open.</summary>
internal sealed record WorkspaceDocumentReport(
    string Uri,
    [property: System.Text.Json.Serialization.JsonIgnore(Condition = System.Text.Json.Serialization.JsonIgnoreCondition.Never)] int? Version,
    string Kind,
    string ResultId,
    Diagnostic[]? Items = null);

/// <summary>Goes with the error that a diagnostic request was called off: whether to ask again.</summary>
internal sealed record DiagnosticCancellation(bool RetriggerRequest);

internal sealed record DiagnosticOptions(string Identifier, bool InterFileDependencies, bool WorkspaceDiagnostics);
