using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/formatting</c> and <c>textDocument/rangeFormatting</c>. The layout is the language's own, so the editor's tab settings aren't read.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class FormattingHandler(Session session)
{
    [JsonRpcMethod("textDocument/formatting", UseSingleObjectParameterDeserialization = true)]
    public Task<TextEdit[]> FormattingAsync(DocumentParams document, CancellationToken cancel) => FormatAsync(document.TextDocument, null, cancel);

    [JsonRpcMethod("textDocument/rangeFormatting", UseSingleObjectParameterDeserialization = true)]
    public Task<TextEdit[]> RangeFormattingAsync(StretchParams stretch, CancellationToken cancel) =>
        FormatAsync(stretch.TextDocument, Places.Of(stretch.Range), cancel);

    private Task<TextEdit[]> FormatAsync(TextDocumentIdentifier document, LineRange? range, CancellationToken cancel) =>
        session.AskAsync(document.Uri, ReadSort.OfText, (snapshot, file, token) =>
            snapshot.Service.Format(file, range, token).Select(Places.ToProtocol).ToArray(), cancel);
}
