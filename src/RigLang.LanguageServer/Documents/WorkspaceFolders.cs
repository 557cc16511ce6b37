using System.Collections.Immutable;
using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Documents;

/// <summary>The folders the client has open, in its order. Folders that are not on the disk are left out: their files can't be read.</summary>
internal sealed class WorkspaceFolders
{
    private ImmutableArray<string> _paths = [];

    internal ImmutableArray<string> Paths => _paths;

    internal void Begin(InitializeParams client)
    {
        var uris = client.WorkspaceFolders is { } folders ? folders.Select(f => f.Uri) : client.RootUri is { } root ? [root] : [];
        _paths = OnDisk(uris);
        if (client is { WorkspaceFolders: null, RootUri: null, RootPath: { Length: > 0 } path })
        {
            _paths = [path.Replace('\\', '/')];
        }
    }

    internal void Change(WorkspaceFoldersChange change)
    {
        var removed = OnDisk(change.Removed.Select(f => f.Uri));
        _paths = [.. _paths.Except(removed).Union(OnDisk(change.Added.Select(f => f.Uri)))];
    }

    private static ImmutableArray<string> OnDisk(IEnumerable<string> uris) =>
        [.. uris.Where(u => u.StartsWith("file:", StringComparison.OrdinalIgnoreCase)).Select(FileUri.DecodeFolder).Distinct()];
}
