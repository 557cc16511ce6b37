namespace RigLang.LanguageServer.Protocol;

/// <summary>What the server says it does. A member that is null is not offered.</summary>
internal sealed record ServerCapabilities(
    string PositionEncoding,
    TextDocumentSyncOptions TextDocumentSync,
    bool HoverProvider,
    CompletionOptions CompletionProvider,
    bool DefinitionProvider,
    bool ReferencesProvider,
    bool TypeDefinitionProvider,
    bool DocumentHighlightProvider,
    RenameOptions RenameProvider,
    bool LinkedEditingRangeProvider,
    bool SelectionRangeProvider,
    DocumentLinkOptions DocumentLinkProvider,
    bool WorkspaceSymbolProvider,
    bool DocumentSymbolProvider,
    bool FoldingRangeProvider,
    InlayHintOptions InlayHintProvider,
    bool DocumentFormattingProvider,
    bool DocumentRangeFormattingProvider,
    OnTypeOptions DocumentOnTypeFormattingProvider,
    SignatureHelpOptions SignatureHelpProvider,
    SemanticTokensOptions SemanticTokensProvider,
    WorkspaceOptions Workspace,
    CodeLensOptions CodeLensProvider,
    ExecuteCommandOptions ExecuteCommandProvider,
    DiagnosticOptions? DiagnosticProvider = null,
    CodeActionOptions? CodeActionProvider = null);

/// <param name="OpenClose">Opening and closing is told.</param>
/// <param name="Change">2: changes come as edits.</param>
internal sealed record TextDocumentSyncOptions(bool OpenClose, int Change);

internal sealed record CompletionOptions(string[] TriggerCharacters, bool ResolveProvider);

/// <summary>Not said to clients that didn't ask for it: the protocol forbids it.</summary>
internal sealed record RenameOptions(bool? PrepareProvider);

internal sealed record DocumentLinkOptions(bool ResolveProvider);

internal sealed record CodeActionOptions(string[] CodeActionKinds, bool ResolveProvider);

internal sealed record SemanticTokensOptions(SemanticTokensLegend Legend, SemanticTokensFullOptions Full, bool Range);

internal sealed record SemanticTokensFullOptions(bool Delta);

internal sealed record InlayHintOptions(bool ResolveProvider);

internal sealed record OnTypeOptions(string FirstTriggerCharacter);

internal sealed record SignatureHelpOptions(string[] TriggerCharacters, string[] RetriggerCharacters);

internal sealed record SemanticTokensLegend(string[] TokenTypes, string[] TokenModifiers);

internal sealed record WorkspaceOptions(WorkspaceFoldersOptions WorkspaceFolders, FileOperationOptions? FileOperations = null, TextDocumentContentOptions? TextDocumentContent = null);

internal sealed record TextDocumentContentOptions(string[] Schemes);

internal sealed record CodeLensOptions(bool ResolveProvider);

internal sealed record ExecuteCommandOptions(string[] Commands);

internal sealed record WorkspaceFoldersOptions(bool Supported, bool ChangeNotifications);
