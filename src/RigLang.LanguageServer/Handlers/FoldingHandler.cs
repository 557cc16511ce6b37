using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/foldingRange</c>: whole lines, so every client can fold them.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class FoldingHandler(Session session)
{
    [JsonRpcMethod("textDocument/foldingRange", UseSingleObjectParameterDeserialization = true)]
    public Task<FoldingRange[]> FoldingRangeAsync(DocumentParams document, CancellationToken cancel) =>
        session.AskAsync(document.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            snapshot.Service.Folds(file, token).Take(session.Features.FoldingRangeLimit ?? int.MaxValue).Select(ToProtocol).ToArray(), cancel);

    private static FoldingRange ToProtocol(FoldStretch fold) => new((uint)fold.FirstLine, (uint)fold.LastLine, fold.IsComment ? "comment" : null);
}
