using RigLang.LanguageServer.Client;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Translate;

namespace RigLang.LanguageServer.Handlers;

/// <summary>What is offered to a client. Everything in here has a handler, and nothing else has.</summary>
internal static class Offer
{
    /// <summary>
    /// The characters after which a list of proposals is of use without asking: a space leads from a keyword to its value, from a number to its unit, from
    /// <c>at</c> to a place; a quote begins a file's path, a slash goes on in it.
    /// </summary>
    private static readonly string[] CompletionTriggers = [" ", "\"", "/"];

    internal static ServerCapabilities To(ClientFeatures client, bool isPulled) => new(
        PositionEncoding: "utf-16",
        TextDocumentSync: new TextDocumentSyncOptions(OpenClose: true, Change: 2),
        HoverProvider: true,
        CompletionProvider: new CompletionOptions(CompletionTriggers, client.LazyCompletions),
        DefinitionProvider: true,
        ReferencesProvider: true,
        TypeDefinitionProvider: true,
        DocumentHighlightProvider: true,
        RenameProvider: new RenameOptions(PrepareProvider: client.PrepareRename ? true : null),
        LinkedEditingRangeProvider: true,
        SelectionRangeProvider: true,
        DocumentLinkProvider: new DocumentLinkOptions(ResolveProvider: false),
        WorkspaceSymbolProvider: true,
        DocumentSymbolProvider: true,
        FoldingRangeProvider: true,
        InlayHintProvider: new InlayHintOptions(client.LazyHints),
        DocumentFormattingProvider: true,
        DocumentRangeFormattingProvider: true,
        DocumentOnTypeFormattingProvider: new OnTypeOptions("\n"),
        SignatureHelpProvider: new SignatureHelpOptions([" "], [" "]),
        SemanticTokensProvider: new SemanticTokensOptions(MeaningTokens.Legend, new SemanticTokensFullOptions(Delta: true), Range: true),
        Workspace: new WorkspaceOptions(new WorkspaceFoldersOptions(Supported: true, ChangeNotifications: true), FileOperations(client), client.TextDocumentContent ? new TextDocumentContentOptions([ReportUri.Scheme]) : null),
        CodeLensProvider: new CodeLensOptions(ResolveProvider: true),
        ExecuteCommandProvider: new ExecuteCommandOptions([ReportHandler.OpenReport]),
        DiagnosticProvider: isPulled ? new DiagnosticOptions("riglang", InterFileDependencies: true, WorkspaceDiagnostics: true) : null,
        CodeActionProvider: client.CodeActionLiterals ? new CodeActionOptions([CodeActionKind.QuickFix, CodeActionKind.Rewrite, CodeActionKind.Extract, CodeActionKind.FixAll], client.LazyCodeActions) : null);

    /// <summary>Rig files and tracks, which others name, and the folders that they may lie in. Null for a client that reports no such operations.</summary>
    private static FileOperationOptions? FileOperations(ClientFeatures client)
    {
        FileOperationFilters? filters = new([new("file", new("**/*.{rig,gpx}", "file")), new("file", new("**", "folder"))]);
        return client is { WillRenameFiles: false, DidRenameFiles: false, DidDeleteFiles: false }
            ? null
            : new FileOperationOptions(client.WillRenameFiles ? filters : null, client.DidRenameFiles ? filters : null, client.DidDeleteFiles ? filters : null);
    }
}
