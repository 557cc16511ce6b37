using PolyType;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/hover</c>: the card for what is under the pointer.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class HoverHandler(Session session)
{
    [JsonRpcMethod("textDocument/hover", UseSingleObjectParameterDeserialization = true)]
    public Task<Hover?> HoverAsync(PlaceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.Lasting, Hover? (snapshot, file, token) =>
            snapshot.Service.Hover(file, Places.Of(place.Position), token) is { } card
                ? new Hover(Markup.Of(card.Markdown, session.Features.MarkdownHover), Places.ToProtocol(card.Range))
                : null, cancel);
}
