using PolyType;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>Folders, files on the disk and settings.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class WorkspaceHandler(Session session)
{
    [JsonRpcMethod("workspace/didChangeWorkspaceFolders", UseSingleObjectParameterDeserialization = true)]
    public void DidChangeWorkspaceFolders(DidChangeWorkspaceFoldersParams changed)
    {
        session.Folders.Change(changed.Event);
        var paths = session.Folders.Paths;
        session.Queue.Write("workspace/didChangeWorkspaceFolders", null, writer => writer.Workspace.SetFolders(paths));
    }

    [JsonRpcMethod("workspace/didChangeWatchedFiles", UseSingleObjectParameterDeserialization = true)]
    public void DidChangeWatchedFiles(DidChangeWatchedFilesParams changed) => LookAgain("workspace/didChangeWatchedFiles", changed.Changes.Select(c => c.Uri));

    /// <summary>The paths in other files that have to change with it, before a file or folder gets another name.</summary>
    [JsonRpcMethod("workspace/willRenameFiles", UseSingleObjectParameterDeserialization = true)]
    public Task<WorkspaceEdit?> WillRenameFilesAsync(RenameFilesParams asked, CancellationToken cancel) =>
        session.AskAsync(WorkspaceEdit? (snapshot, token) =>
            snapshot.Service.PathsAfterMove([.. asked.Files.Select(f => (FileUri.Decode(f.OldUri), FileUri.Decode(f.NewUri)))], token) is { IsEmpty: false } edits
                ? Fixes.ToProtocol(edits, snapshot.Documents, session.Features)
                : null, cancel);

    [JsonRpcMethod("workspace/didRenameFiles", UseSingleObjectParameterDeserialization = true)]
    public void DidRenameFiles(RenameFilesParams renamed) => LookAgain("workspace/didRenameFiles", renamed.Files.SelectMany(f => new[] { f.OldUri, f.NewUri }));

    [JsonRpcMethod("workspace/didDeleteFiles", UseSingleObjectParameterDeserialization = true)]
    public void DidDeleteFiles(DeleteFilesParams deleted) => LookAgain("workspace/didDeleteFiles", deleted.Files.Select(f => f.Uri));

    [JsonRpcMethod("workspace/didChangeConfiguration", UseSingleObjectParameterDeserialization = true)]
    public async Task DidChangeConfigurationAsync(DidChangeConfigurationParams changed)
    {
        if (session.Features.Configuration)
        {
            await session.PullSettingsAsync().ConfigureAwait(false);
        }
        else
        {
            session.Apply(changed.Settings);
        }
    }

    private void LookAgain(string name, IEnumerable<string> uris)
    {
        var files = uris.Select(FileUri.Decode).Distinct().ToArray();
        session.Queue.Write(name, null, writer => writer.Workspace.DiskChanged(files));
    }
}
