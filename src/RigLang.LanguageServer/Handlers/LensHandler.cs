using PolyType;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/codeLens</c>: the verdict above each rig and trip, worked out when it comes into view. A click opens the report.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class LensHandler(Session session)
{
    [JsonRpcMethod("textDocument/codeLens", UseSingleObjectParameterDeserialization = true)]
    public Task<CodeLens[]> CodeLensAsync(DocumentParams document, CancellationToken cancel) =>
        session.AskAsync(document.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) => snapshot.Service.Lenses(file, token)
            .Select(lens => new CodeLens(Places.ToProtocol(lens.Range), Data: new CodeLensData(document.TextDocument.Uri, lens.Subject))).ToArray(), cancel);

    [JsonRpcMethod("codeLens/resolve", UseSingleObjectParameterDeserialization = true)]
    public Task<CodeLens> ResolveAsync(CodeLens lens, CancellationToken cancel) => lens.Data is not { } data
        ? Task.FromResult(lens)
        : session.AskAsync(data.Uri, ReadSort.Lasting, (snapshot, file, token) =>
            lens with { Command = new Command(snapshot.Service.LensWords(file, data.Subject, token), ReportHandler.OpenReport, [data.Uri, data.Subject]) }, cancel);
}
