using System.Text.Json;

namespace RigLang.LanguageServer.Client;

/// <summary>What the client can take, read once from its capabilities. A capability that is absent, or of another form than the protocol's, counts as absent.</summary>
internal sealed record ClientFeatures
{
    internal bool HierarchicalSymbols { get; init; }

    internal bool MarkdownHover { get; init; }

    internal bool MarkdownCompletion { get; init; }

    internal bool Snippets { get; init; }

    internal bool CodeActionLiterals { get; init; }

    internal bool RelatedInformation { get; init; }

    internal bool DiagnosticVersions { get; init; }

    internal bool UnnecessaryTag { get; init; }

    internal bool CodeDescriptions { get; init; }

    internal bool DiagnosticData { get; init; }

    internal bool DocumentChanges { get; init; }

    /// <summary>It asks for the documentation of the entry that is looked at.</summary>
    internal bool LazyCompletions { get; init; }

    internal bool LazyHints { get; init; }

    internal bool LazyCodeActions { get; init; }

    internal bool MarkdownSignature { get; init; }

    internal bool SignatureOffsets { get; init; }

    internal bool PrepareRename { get; init; }

    internal bool LinkTooltips { get; init; }

    internal bool WillRenameFiles { get; init; }

    internal bool DidRenameFiles { get; init; }

    internal bool DidDeleteFiles { get; init; }

    /// <summary>It shows findings that are sent to it.</summary>
    internal bool PublishedDiagnostics { get; init; }

    /// <summary>It asks for findings.</summary>
    internal bool PulledDiagnostics { get; init; }

    internal bool DiagnosticRefresh { get; init; }

    internal bool CodeLensRefresh { get; init; }

    internal bool TextDocumentContent { get; init; }

    internal bool ShowDocument { get; init; }

    internal bool WorkDoneProgress { get; init; }

    internal bool InlayHintRefresh { get; init; }

    internal bool SemanticTokensRefresh { get; init; }

    internal bool Configuration { get; init; }

    internal bool RegisterConfiguration { get; init; }

    internal bool RegisterWatchedFiles { get; init; }

    /// <summary>How many folding ranges are taken; null for any number.</summary>
    internal int? FoldingRangeLimit { get; init; }

    internal static ClientFeatures Of(JsonElement capabilities)
    {
        var caps = new MemberReader(capabilities);
        return new ClientFeatures
        {
            HierarchicalSymbols = caps.Flag("textDocument.documentSymbol.hierarchicalDocumentSymbolSupport"),
            MarkdownHover = caps.Lists("textDocument.hover.contentFormat", "markdown"),
            MarkdownCompletion = caps.Lists("textDocument.completion.completionItem.documentationFormat", "markdown"),
            Snippets = caps.Flag("textDocument.completion.completionItem.snippetSupport"),
            CodeActionLiterals = caps.Has("textDocument.codeAction.codeActionLiteralSupport"),
            RelatedInformation = caps.Flag("textDocument.publishDiagnostics.relatedInformation"),
            DiagnosticVersions = caps.Flag("textDocument.publishDiagnostics.versionSupport"),
            UnnecessaryTag = caps.Lists("textDocument.publishDiagnostics.tagSupport.valueSet", Protocol.DiagnosticTag.Unnecessary),
            CodeDescriptions = caps.Flag("textDocument.publishDiagnostics.codeDescriptionSupport"),
            DiagnosticData = caps.Flag("textDocument.publishDiagnostics.dataSupport"),
            DocumentChanges = caps.Flag("workspace.workspaceEdit.documentChanges"),
            LazyCompletions = caps.Lists("textDocument.completion.completionItem.resolveSupport.properties", "documentation"),
            LazyHints = caps.Lists("textDocument.inlayHint.resolveSupport.properties", "tooltip"),
            LazyCodeActions = caps.Flag("textDocument.codeAction.dataSupport") && caps.Lists("textDocument.codeAction.resolveSupport.properties", "edit"),
            MarkdownSignature = caps.Lists("textDocument.signatureHelp.signatureInformation.documentationFormat", "markdown"),
            SignatureOffsets = caps.Flag("textDocument.signatureHelp.signatureInformation.parameterInformation.labelOffsetSupport"),
            PrepareRename = caps.Flag("textDocument.rename.prepareSupport"),
            LinkTooltips = caps.Flag("textDocument.documentLink.tooltipSupport"),
            WillRenameFiles = caps.Flag("workspace.fileOperations.willRename"),
            DidRenameFiles = caps.Flag("workspace.fileOperations.didRename"),
            DidDeleteFiles = caps.Flag("workspace.fileOperations.didDelete"),
            PublishedDiagnostics = caps.Has("textDocument.publishDiagnostics"),
            PulledDiagnostics = caps.Has("textDocument.diagnostic"),
            DiagnosticRefresh = caps.Flag("workspace.diagnostics.refreshSupport"),
            CodeLensRefresh = caps.Flag("workspace.codeLens.refreshSupport"),
            TextDocumentContent = caps.Has("workspace.textDocumentContent"),
            ShowDocument = caps.Flag("window.showDocument.support"),
            WorkDoneProgress = caps.Flag("window.workDoneProgress"),
            InlayHintRefresh = caps.Flag("workspace.inlayHint.refreshSupport"),
            SemanticTokensRefresh = caps.Flag("workspace.semanticTokens.refreshSupport"),
            Configuration = caps.Flag("workspace.configuration"),
            RegisterConfiguration = caps.Flag("workspace.didChangeConfiguration.dynamicRegistration"),
            RegisterWatchedFiles = caps.Flag("workspace.didChangeWatchedFiles.dynamicRegistration"),
            FoldingRangeLimit = caps.Number("textDocument.foldingRange.rangeLimit"),
        };
    }
}
