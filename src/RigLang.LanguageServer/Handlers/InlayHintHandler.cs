using System.Text.Json;
using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using RigLang.LanguageServer.Wire;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/inlayHint</c>: computed values behind the lines, unless the settings turn them off. The tooltip is written when it is looked at.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class InlayHintHandler(Session session)
{
    [JsonRpcMethod("textDocument/inlayHint", UseSingleObjectParameterDeserialization = true)]
    public Task<InlayHint[]> InlayHintAsync(StretchParams stretch, CancellationToken cancel) =>
        session.AskAsync(stretch.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            session.Settings.Hints
                ? snapshot.Service.InlayNotes(file, Places.Of(stretch.Range), token).Select(note => ToProtocol(note, stretch.TextDocument.Uri)).ToArray()
                : [], cancel);

    /// <summary>The hint with the tooltip that its line has by now; without one where the line has no such hint any more.</summary>
    [JsonRpcMethod("inlayHint/resolve", UseSingleObjectParameterDeserialization = true)]
    public Task<JsonElement> ResolveAsync(JsonElement hint, CancellationToken cancel)
    {
        var asked = JsonSerializer.Deserialize(hint, LspJson.Default.InlayHint)!;
        return asked.Data is null ? Task.FromResult(hint) : session.AskAsync(asked.Data.Uri, ReadSort.Lasting, (snapshot, file, token) =>
        {
            var place = Places.Of(asked.Position);
            var note = snapshot.Service.InlayNotes(file, new LineRange(place, place), token).FirstOrDefault(note => note.Position == place && note.Label == asked.Label);
            return note is { Tooltip.Length: > 0 } ? Filled.With(hint, "tooltip", new MarkupContent("markdown", note.Tooltip)) : hint;
        }, cancel);
    }

    /// <summary>Clients that show hints show Markdown in their tooltips: the protocol names no capability for it.</summary>
    private InlayHint ToProtocol(InlayNote note, string uri) => session.Features.LazyHints
        ? new InlayHint(Places.ToProtocol(note.Position), note.Label, PaddingLeft: true, Data: new InlayHintData(uri))
        : new InlayHint(Places.ToProtocol(note.Position), note.Label, PaddingLeft: true, note.Tooltip.Length > 0 ? new MarkupContent("markdown", note.Tooltip) : null);
}
