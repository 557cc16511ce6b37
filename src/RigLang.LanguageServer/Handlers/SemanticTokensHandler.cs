using PolyType;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/semanticTokens</c>: colours by meaning; of the whole text, of a stretch, or as what changed since the last answer.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class SemanticTokensHandler(Session session)
{
    private readonly KeptTokens _kept = new();

    [JsonRpcMethod("textDocument/semanticTokens/full", UseSingleObjectParameterDeserialization = true)]
    public Task<SemanticTokens> FullAsync(DocumentParams document, CancellationToken cancel) =>
        session.AskAsync(document.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
        {
            var data = MeaningTokens.ToProtocol(snapshot.Service.MeaningTokens(file, null, token));
            return new SemanticTokens(data, _kept.Keep(file, data));
        }, cancel);

    [JsonRpcMethod("textDocument/semanticTokens/full/delta", UseSingleObjectParameterDeserialization = true)]
    public Task<object> DeltaAsync(SemanticTokensDeltaParams asked, CancellationToken cancel) =>
        session.AskAsync(asked.TextDocument.Uri, ReadSort.OfText, object (snapshot, file, token) =>
        {
            var data = MeaningTokens.ToProtocol(snapshot.Service.MeaningTokens(file, null, token));
            var before = _kept.Find(file, asked.PreviousResultId);
            var id = _kept.Keep(file, data);
            return before is null ? new SemanticTokens(data, id) : new SemanticTokensDelta(MeaningTokens.Difference(before, data), id);
        }, cancel);

    [JsonRpcMethod("textDocument/semanticTokens/range", UseSingleObjectParameterDeserialization = true)]
    public Task<SemanticTokens> RangeAsync(StretchParams stretch, CancellationToken cancel) =>
        session.AskAsync(stretch.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            new SemanticTokens(MeaningTokens.ToProtocol(snapshot.Service.MeaningTokens(file, Places.Of(stretch.Range), token))), cancel);
}
