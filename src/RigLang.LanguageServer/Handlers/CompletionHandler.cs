using System.Text.Json;
using PolyType;
using RigLang.LanguageServer.Client;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>
/// <c>textDocument/completion</c>: what may stand here. The list is complete, so the client narrows it while the person types. Clients that can ask later get the
/// documentation of an entry when it is looked at.
/// </summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class CompletionHandler(Session session)
{
    private readonly LastLists _lists = new();

    [JsonRpcMethod("textDocument/completion", UseSingleObjectParameterDeserialization = true)]
    public Task<CompletionList> CompletionAsync(PlaceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.Lasting, (snapshot, file, token) =>
        {
            var entries = snapshot.Service.Complete(file, Places.Of(place.Position), token);
            int? list = session.Features.LazyCompletions && !entries.IsEmpty ? _lists.Keep(entries) : null;
            return new CompletionList(IsIncomplete: false, [.. entries.Select((entry, index) => list is { } kept
                ? Completions.ToProtocol(entry, session.Features) with { Documentation = null, Data = entry.Documentation.Length > 0 ? new CompletionData(kept, index) : null }
                : Completions.ToProtocol(entry, session.Features))]);
        }, cancel);

    /// <summary>The item as it came, with its documentation if that is still at hand.</summary>
    [JsonRpcMethod("completionItem/resolve", UseSingleObjectParameterDeserialization = true)]
    public JsonElement Resolve(JsonElement item)
    {
        var sent = new MemberReader(item);
        var entry = sent.Number("data.list") is { } list && sent.Number("data.item") is { } at ? _lists.Find(list, at) : null;
        return entry is null ? item : Filled.With(item, "documentation", Markup.Of(entry.Documentation, session.Features.MarkdownCompletion));
    }
}
