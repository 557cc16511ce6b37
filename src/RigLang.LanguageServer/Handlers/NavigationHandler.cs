using System.Collections.Immutable;
using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>Definition, type definition and references of a name, and names found by their letters, over all files of the workspace.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class NavigationHandler(Session session)
{
    [JsonRpcMethod("textDocument/definition", UseSingleObjectParameterDeserialization = true)]
    public Task<Location[]> DefinitionAsync(PlaceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.Lasting, (snapshot, file, token) =>
            Locations(snapshot.Service.Definition(file, Places.Of(place.Position), token), snapshot), cancel);

    [JsonRpcMethod("textDocument/typeDefinition", UseSingleObjectParameterDeserialization = true)]
    public Task<Location[]> TypeDefinitionAsync(PlaceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.Lasting, (snapshot, file, token) =>
            Locations(snapshot.Service.TypeDefinition(file, Places.Of(place.Position), token), snapshot), cancel);

    [JsonRpcMethod("textDocument/references", UseSingleObjectParameterDeserialization = true)]
    public Task<Location[]> ReferencesAsync(ReferenceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.Lasting, (snapshot, file, token) =>
            Locations(snapshot.Service.References(file, Places.Of(place.Position), place.Context.IncludeDeclaration, token), snapshot), cancel);

    [JsonRpcMethod("workspace/symbol", UseSingleObjectParameterDeserialization = true)]
    public Task<SymbolInformation[]> WorkspaceSymbolAsync(WorkspaceSymbolParams asked, CancellationToken cancel) =>
        session.AskAsync((snapshot, token) => snapshot.Service.NamesLike(asked.Query, token).Select(found => Outline.Found(found, snapshot.Documents)).ToArray(), cancel);

    private static Location[] Locations(ImmutableArray<FilePlace> places, Snapshot snapshot) => [.. places.Select(p => Places.ToProtocol(p, snapshot.Documents))];
}
