using System.Collections.Immutable;
using RigLang.Editing;
using RigLang.LanguageServer.Client;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Translate;

/// <summary>Fixes and other changes as edits of the workspace.</summary>
internal static class Fixes
{
    internal static WorkspaceEdit ToProtocol(ImmutableArray<(FilePlace Place, string NewText)> edits, OpenDocuments documents, ClientFeatures client)
    {
        var files = edits.GroupBy(e => e.Place.File, e => new TextEdit(Places.ToProtocol(e.Place.Range), e.NewText));
        return client.DocumentChanges
            ? new WorkspaceEdit(DocumentChanges: [.. files.Select(f => new TextDocumentEdit(new(documents.UriOf(f.Key), documents.VersionOf(f.Key)), [.. f]))])
            : new WorkspaceEdit(Changes: files.ToDictionary(f => documents.UriOf(f.Key), f => f.ToArray()));
    }
}
