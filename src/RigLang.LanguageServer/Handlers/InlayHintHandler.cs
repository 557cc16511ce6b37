using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/inlayHint</c>: computed values behind the lines, unless the settings turn them off.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class InlayHintHandler(Session session)
{
    [JsonRpcMethod("textDocument/inlayHint", UseSingleObjectParameterDeserialization = true)]
    public Task<InlayHint[]> InlayHintAsync(StretchParams stretch, CancellationToken cancel) =>
        session.AskAsync(stretch.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            session.Settings.Hints
                ? snapshot.Service.InlayNotes(file, Places.Of(stretch.Range), token).Select(ToProtocol).ToArray()
                : [], cancel);

    /// <summary>Clients that show hints show Markdown in their tooltips: the protocol names no capability for it.</summary>
    private static InlayHint ToProtocol(InlayNote note) => new(
        Places.ToProtocol(note.Position), note.Label, PaddingLeft: true, note.Tooltip.Length > 0 ? new MarkupContent("markdown", note.Tooltip) : null);
}
