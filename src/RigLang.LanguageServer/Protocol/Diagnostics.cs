namespace RigLang.LanguageServer.Protocol;

internal sealed record PublishDiagnosticsParams(string Uri, Diagnostic[] Diagnostics, int? Version = null);

internal sealed record Diagnostic(
    TextRange Range,
    int Severity,
    string Code,
    string Source,
    string Message,
    CodeDescription? CodeDescription = null,
    int[]? Tags = null,
    DiagnosticRelatedInformation[]? RelatedInformation = null,
    DiagnosticData? Data = null);

internal sealed record CodeDescription(string Href);

internal sealed record DiagnosticRelatedInformation(Location Location, string Message);

/// <summary>Comes back with a code action request: the check's name and the titles of the fixes it has here.</summary>
internal sealed record DiagnosticData(string Check, string[] Fixes);

internal static class DiagnosticSeverity
{
    internal const int Error = 1;
    internal const int Warning = 2;
    internal const int Information = 3;
}

internal static class DiagnosticTag
{
    internal const int Unnecessary = 1;
}
