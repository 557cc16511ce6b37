using PolyType;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/documentLink</c>: the paths of <c>use</c> lines and of tracks open their files.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class LinkHandler(Session session)
{
    [JsonRpcMethod("textDocument/documentLink", UseSingleObjectParameterDeserialization = true)]
    public Task<DocumentLink[]> DocumentLinkAsync(DocumentParams document, CancellationToken cancel) =>
        session.AskAsync(document.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) => snapshot.Service.Links(file, token)
            .Select(link => new DocumentLink(Places.ToProtocol(link.Range), snapshot.Documents.UriOf(link.Target), session.Features.LinkTooltips ? link.Tooltip : null)).ToArray(), cancel);
}
