using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using RigLang.Syntax;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/formatting</c>, of the whole, of a range, or of the line just left. The layout is the language's own, so the editor's tab settings aren't read.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class FormattingHandler(Session session)
{
    [JsonRpcMethod("textDocument/formatting", UseSingleObjectParameterDeserialization = true)]
    public Task<TextEdit[]> FormattingAsync(DocumentParams document, CancellationToken cancel) => FormatAsync(document.TextDocument, null, cancel);

    [JsonRpcMethod("textDocument/rangeFormatting", UseSingleObjectParameterDeserialization = true)]
    public Task<TextEdit[]> RangeFormattingAsync(StretchParams stretch, CancellationToken cancel) =>
        FormatAsync(stretch.TextDocument, Places.Of(stretch.Range), cancel);

    /// <summary>The line that was left with the Enter key. The one that the caret is in now is still being written.</summary>
    [JsonRpcMethod("textDocument/onTypeFormatting", UseSingleObjectParameterDeserialization = true)]
    public Task<TextEdit[]> OnTypeFormattingAsync(OnTypeParams typed, CancellationToken cancel)
    {
        var line = Places.Of(typed.Position).Line;
        return line == 0
            ? Task.FromResult<TextEdit[]>([])
            : FormatAsync(typed.TextDocument, new LineRange(new LinePosition(line - 1, 0), new LinePosition(line, 0)), cancel);
    }

    private Task<TextEdit[]> FormatAsync(TextDocumentIdentifier document, LineRange? range, CancellationToken cancel) =>
        session.AskAsync(document.Uri, ReadSort.OfText, (snapshot, file, token) =>
            snapshot.Service.Format(file, range, token).Select(Places.ToProtocol).ToArray(), cancel);
}
