namespace RigLang.LanguageServer.Protocol;

internal sealed record DidOpenTextDocumentParams(TextDocumentItem TextDocument);

internal sealed record TextDocumentItem(string Uri, string LanguageId, int Version, string Text);

internal sealed record DidChangeTextDocumentParams(VersionedTextDocumentIdentifier TextDocument, TextChange[] ContentChanges);

internal sealed record VersionedTextDocumentIdentifier(string Uri, int Version);

/// <summary>Without a range the text replaces everything.</summary>
internal sealed record TextChange(string Text, TextRange? Range = null);
