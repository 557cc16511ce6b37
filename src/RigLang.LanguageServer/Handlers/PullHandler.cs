using System.Security.Cryptography;
using System.Text.Json;
using PolyType;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Wire;
using RigLang.Model.Files;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>
/// Findings on request. Each set has a name made from what is in it, so a client that has it is told that nothing changed. The request for the whole workspace is
/// held until there is something to tell; the client asks again at once.
/// </summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class PullHandler(Session session)
{
    private const string Full = "full";
    private const string Unchanged = "unchanged";

    [JsonRpcMethod("textDocument/diagnostic", UseSingleObjectParameterDeserialization = true)]
    public async Task<DocumentDiagnosticReport> DocumentAsync(DocumentDiagnosticParams asked, CancellationToken cancel)
    {
        try
        {
            return await session.AskAsync(asked.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            {
                var (id, items) = Find(snapshot, file, token);
                return id == asked.PreviousResultId ? new DocumentDiagnosticReport(Unchanged, id) : new DocumentDiagnosticReport(Full, id, items);
            }, cancel).ConfigureAwait(false);
        }
        catch (LocalRpcException modified) when (modified.ErrorCode == ErrorCodes.ContentModified)
        {
            throw new LocalRpcException(modified.Message) { ErrorCode = ErrorCodes.ServerCancelled, ErrorData = new DiagnosticCancellation(RetriggerRequest: true) };
        }
    }

    [JsonRpcMethod("workspace/diagnostic", UseSingleObjectParameterDeserialization = true)]
    public async Task<WorkspaceDiagnosticReport> WorkspaceAsync(WorkspaceDiagnosticParams asked, CancellationToken cancel)
    {
        var known = asked.PreviousResultIds.GroupBy(id => FileUri.Decode(id.Uri)).ToDictionary(group => group.Key, group => group.Last());
        while (true)
        {
            var seen = session.Writes.Count;
            var items = await session.AskAsync((snapshot, token) => Changes(snapshot, known, token), cancel).ConfigureAwait(false);
            if (items.Length > 0 || known.Count == 0 || !await session.Writes.AfterAsync(seen, cancel).ConfigureAwait(false))
            {
                return new WorkspaceDiagnosticReport(items);
            }
        }
    }

    private WorkspaceDocumentReport[] Changes(Snapshot snapshot, Dictionary<FileId, PreviousResultId> known, CancellationToken cancel)
    {
        var changes = new List<WorkspaceDocumentReport>();
        var files = snapshot.Service.Files(cancel);
        foreach (var file in files)
        {
            var (id, items) = Find(snapshot, file, cancel);
            if (known.TryGetValue(file, out var before) ? before.Value != id : items.Length > 0)
            {
                changes.Add(new WorkspaceDocumentReport(snapshot.Documents.UriOf(file), snapshot.Documents.VersionOf(file), Full, id, items));
            }
        }

        // A file that has gone has findings to take back, once.
        var (none, _) = Name([]);
        changes.AddRange(known.Where(pair => !files.Contains(pair.Key) && pair.Value.Value != none).Select(pair => new WorkspaceDocumentReport(pair.Value.Uri, null, Full, none, [])));
        return [.. changes];
    }

    private (string Id, Diagnostic[] Items) Find(Snapshot snapshot, FileId file, CancellationToken cancel) =>
        Name(session.Diagnostics.Translate(snapshot.Service.Findings(file, cancel), file, snapshot.Documents));

    private static (string Id, Diagnostic[] Items) Name(Diagnostic[] items) =>
        (Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(items, LspJson.Default.DiagnosticArray)).AsSpan(0, 8)), items);
}
