using System.Text.Json;
using PolyType;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Wire;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>
/// The full report as a read-only document: by the protocol's own text content for clients that have it, else by the request <c>riglang/report</c>. The command
/// behind the line above a rig or trip shows it.
/// </summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class ReportHandler(Session session)
{
    internal const string OpenReport = "riglang.openReport";

    [JsonRpcMethod("workspace/textDocumentContent", UseSingleObjectParameterDeserialization = true)]
    public async Task<TextDocumentContentResult> TextDocumentContentAsync(TextDocumentContentParams asked, CancellationToken cancel)
    {
        if (ReportUri.Read(asked.Uri) is not var (document, subject))
        {
            throw new LocalRpcException($"{asked.Uri} is no report") { ErrorCode = ErrorCodes.RequestFailed };
        }

        session.Reports.Add(asked.Uri);
        return new TextDocumentContentResult(await TextAsync(document, subject, cancel).ConfigureAwait(false));
    }

    [JsonRpcMethod("riglang/report", UseSingleObjectParameterDeserialization = true)]
    public async Task<ReportResult> ReportAsync(ReportParams asked, CancellationToken cancel) =>
        new(ReportUri.Of(asked.TextDocument.Uri, asked.Subject), await TextAsync(asked.TextDocument.Uri, asked.Subject, cancel).ConfigureAwait(false));

    /// <summary>Answers the report; a client that can show documents of ours is asked to show it.</summary>
    [JsonRpcMethod("workspace/executeCommand", UseSingleObjectParameterDeserialization = true)]
    public async Task<ReportResult> ExecuteCommandAsync(ExecuteCommandParams asked, CancellationToken cancel)
    {
        if (asked.Command != OpenReport)
        {
            throw new LocalRpcException($"no command is called {asked.Command}") { ErrorCode = ErrorCodes.InvalidParams };
        }

        if (Text(asked.Arguments, 0) is not { } document)
        {
            throw new LocalRpcException($"{OpenReport} takes a document's URI, then a declaration such as \"rig coast\"") { ErrorCode = ErrorCodes.InvalidParams };
        }

        var report = await ReportAsync(new ReportParams(new TextDocumentIdentifier(document), Text(asked.Arguments, 1)), cancel).ConfigureAwait(false);
        if (session.Features is { ShowDocument: true, TextDocumentContent: true })
        {
            _ = session.Client.ShowDocumentAsync(report.Uri);
        }

        return report;
    }

    private Task<string> TextAsync(string document, string? subject, CancellationToken cancel) => session.AskAsync(document, ReadSort.Lasting, (snapshot, file, token) =>
        snapshot.Service.Report(file, subject, token) ?? throw new LocalRpcException($"{file.Name} has no {subject ?? "text"}") { ErrorCode = ErrorCodes.RequestFailed }, cancel);

    private static string? Text(JsonElement[]? arguments, int index) =>
        arguments is not null && index < arguments.Length && arguments[index].ValueKind == JsonValueKind.String ? arguments[index].GetString() : null;
}
