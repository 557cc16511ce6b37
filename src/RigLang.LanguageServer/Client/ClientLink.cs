using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using RigLang.LanguageServer.Protocol;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Client;

/// <summary>What the server says of its own accord. Nothing here throws when the client has gone or refuses.</summary>
internal sealed class ClientLink
{
    private JsonRpc? _rpc;

    internal void Attach(JsonRpc rpc) => _rpc = rpc;

    internal Task PublishAsync(PublishDiagnosticsParams diagnostics) => NotifyAsync("textDocument/publishDiagnostics", diagnostics);

    internal Task LogAsync(int type, string message) => NotifyAsync("window/logMessage", new LogMessageParams(type, message));

    internal Task RegisterAsync(params Registration[] registrations) => AskAsync("client/registerCapability", new RegistrationParams(registrations));

    internal Task TraceAsync(LogTraceParams trace) => NotifyAsync("$/logTrace", trace);

    internal Task ProgressAsync(ProgressParams progress) => NotifyAsync("$/progress", progress);

    /// <summary>False when the client doesn't want it.</summary>
    internal async Task<bool> CreateProgressAsync(string token) =>
        await AskAsync("window/workDoneProgress/create", new WorkDoneProgressCreateParams(token)).ConfigureAwait(false) is not null;

    internal Task ShowDocumentAsync(string uri) => AskAsync("window/showDocument", new ShowDocumentParams(uri, TakeFocus: true));

    internal Task RefreshReportAsync(string uri) => AskAsync("workspace/textDocumentContent/refresh", new TextDocumentContentParams(uri));

    internal Task RefreshCodeLensesAsync() => AskAsync("workspace/codeLens/refresh", null);

    internal Task RefreshDiagnosticsAsync() => AskAsync("workspace/diagnostic/refresh", null);

    internal Task RefreshInlayHintsAsync() => AskAsync("workspace/inlayHint/refresh", null);

    internal Task RefreshSemanticTokensAsync() => AskAsync("workspace/semanticTokens/refresh", null);

    /// <summary>The settings under a section, or null when the client doesn't say.</summary>
    internal async Task<JsonElement?> ConfigurationAsync(string section)
    {
        var answer = await AskAsync("workspace/configuration", new ConfigurationParams([new ConfigurationItem(section)])).ConfigureAwait(false);
        return answer is { ValueKind: JsonValueKind.Array } list && list.GetArrayLength() > 0 ? list[0] : null;
    }

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Every type on the wire is in LspJson.")]
    private async Task NotifyAsync(string method, object argument)
    {
        try
        {
            await (_rpc?.NotifyWithParameterObjectAsync(method, argument, null) ?? Task.CompletedTask).ConfigureAwait(false);
        }
        catch (Exception gone) when (IsTheClients(gone))
        {
        }
    }

    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Every type on the wire is in LspJson.")]
    private async Task<JsonElement?> AskAsync(string method, object? argument)
    {
        try
        {
            return _rpc is null ? null : await _rpc.InvokeWithParameterObjectAsync<JsonElement>(method, argument, null, CancellationToken.None).ConfigureAwait(false);
        }
        catch (Exception gone) when (IsTheClients(gone))
        {
            return null;
        }
    }

    private static bool IsTheClients(Exception problem) =>
        problem is RemoteRpcException or ConnectionLostException or ObjectDisposedException or OperationCanceledException or IOException or InvalidOperationException or JsonException;
}
