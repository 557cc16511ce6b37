using PolyType;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/semanticTokens/full</c>: colours by meaning.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class SemanticTokensHandler(Session session)
{
    [JsonRpcMethod("textDocument/semanticTokens/full", UseSingleObjectParameterDeserialization = true)]
    public Task<SemanticTokens> FullAsync(DocumentParams document, CancellationToken cancel) =>
        session.AskAsync(document.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            MeaningTokens.ToProtocol(snapshot.Service.MeaningTokens(file, token)), cancel);
}
