using PolyType;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
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
    public void DidChangeWatchedFiles(DidChangeWatchedFilesParams changed)
    {
        var files = changed.Changes.Select(c => FileUri.Decode(c.Uri)).Distinct().ToArray();
        session.Queue.Write("workspace/didChangeWatchedFiles", null, writer => writer.Workspace.DiskChanged(files));
    }

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
}
