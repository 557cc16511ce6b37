using System.Text.Json;
using RigLang.Editing;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Tests.Support;

/// <summary>A server on the fake workspace with a client at the other end.</summary>
internal sealed class RunningServer : IAsyncDisposable
{
    private static readonly TimeSpan TooLong = TimeSpan.FromSeconds(20);

    private RunningServer(FakeWorkspace workspace, LanguageServerOptions? options, Func<IEditorWorkspace>? factory, CancellationToken cancel)
    {
        Workspace = workspace;
        Exit = LanguageServerHost.RunAsync(Client.ServerInput, Client.ServerOutput, factory ?? (() => workspace), options ?? Options, cancel);
        Client.Start();
    }

    internal static LanguageServerOptions Options { get; } = new()
    {
        Version = "1.2.3",
        CheckPage = check => $"https://docs.example/checks/{check.Code}",
        ProcessEnd = (_, cancel) => Task.Delay(Timeout.Infinite, cancel),
    };

    /// <summary>A client that can do everything.</summary>
    internal static object FullCapabilities { get; } = new
    {
        workspace = new
        {
            workspaceEdit = new { documentChanges = true },
            inlayHint = new { refreshSupport = true },
            semanticTokens = new { refreshSupport = true },
            didChangeWatchedFiles = new { dynamicRegistration = true },
            workspaceFolders = true,
            fileOperations = new { willRename = true, didRename = true, didDelete = true },
        },
        textDocument = new
        {
            hover = new { contentFormat = new[] { "markdown", "plaintext" } },
            completion = new { completionItem = new { snippetSupport = true, documentationFormat = new[] { "markdown" } } },
            rename = new { prepareSupport = true },
            documentLink = new { tooltipSupport = true },
            documentSymbol = new { hierarchicalDocumentSymbolSupport = true },
            codeAction = new { codeActionLiteralSupport = new { codeActionKind = new { valueSet = new[] { "quickfix" } } } },
            publishDiagnostics = new { relatedInformation = true, versionSupport = true, codeDescriptionSupport = true, dataSupport = true, tagSupport = new { valueSet = new[] { 1, 2 } } },
        },
    };

    internal WireClient Client { get; } = new();

    internal FakeWorkspace Workspace { get; }

    /// <summary>The server's exit code.</summary>
    internal Task<int> Exit { get; }

    /// <summary>A server that has been told nothing yet.</summary>
    internal static RunningServer Silent(
        FakeWorkspace? workspace = null, LanguageServerOptions? options = null, Func<IEditorWorkspace>? factory = null, CancellationToken cancel = default) =>
        new(workspace ?? new FakeWorkspace(), options, factory, cancel);

    /// <summary>A server that has been through <c>initialize</c> and <c>initialized</c>.</summary>
    internal static async Task<RunningServer> StartAsync(
        object? capabilities = null, FakeWorkspace? workspace = null, LanguageServerOptions? options = null, object? settings = null)
    {
        var server = Silent(workspace, options);
        await server.Client.ResultAsync("initialize", new { processId = (int?)null, rootUri = (string?)null, capabilities = capabilities ?? FullCapabilities, initializationOptions = settings });
        await server.Client.NotifyAsync("initialized");
        return server;
    }

    internal static FileId File(string uri) => Documents.FileUri.Decode(uri);

    internal Task OpenAsync(string uri, string text, int version = 1) =>
        Client.NotifyAsync("textDocument/didOpen", new { textDocument = new { uri, languageId = "rig", version, text } });

    /// <summary>Replaces the whole text.</summary>
    internal Task ReplaceAsync(string uri, string text, int version) =>
        Client.NotifyAsync("textDocument/didChange", new { textDocument = new { uri, version }, contentChanges = new[] { new { text } } });

    internal Task CloseAsync(string uri) => Client.NotifyAsync("textDocument/didClose", new { textDocument = new { uri } });

    internal Task<JsonElement> NextSetAsync() => Client.NextAsync("textDocument/publishDiagnostics");

    internal async Task<int> ExitCodeAsync() => await Exit.WaitAsync(TooLong);

    public async ValueTask DisposeAsync()
    {
        await Client.EndInputAsync();
        await ExitCodeAsync();
        await Client.DisposeAsync();
    }
}
