using PolyType;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/documentSymbol</c>: nested for clients that take it, else flat.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class OutlineHandler(Session session)
{
    [JsonRpcMethod("textDocument/documentSymbol", UseSingleObjectParameterDeserialization = true)]
    public Task<object> DocumentSymbolAsync(DocumentParams document, CancellationToken cancel) =>
        session.AskAsync(document.TextDocument.Uri, ReadSort.OfText, object (snapshot, file, token) =>
        {
            var entries = snapshot.Service.Outline(file, token);
            return session.Features.HierarchicalSymbols
                ? entries.Select(Outline.Nested).ToArray()
                : Outline.Flat(entries, snapshot.Documents.UriOf(file)).ToArray();
        }, cancel);
}
