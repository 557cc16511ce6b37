using PolyType;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/completion</c>: what may stand here. The list is complete, so the client narrows it while the person types.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class CompletionHandler(Session session)
{
    [JsonRpcMethod("textDocument/completion", UseSingleObjectParameterDeserialization = true)]
    public Task<CompletionList> CompletionAsync(PlaceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.Lasting, (snapshot, file, token) =>
        {
            var entries = snapshot.Service.Complete(file, Places.Of(place.Position), token);
            return new CompletionList(IsIncomplete: false, [.. entries.Select(e => Completions.ToProtocol(e, session.Features))]);
        }, cancel);
}
