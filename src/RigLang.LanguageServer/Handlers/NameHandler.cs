using PolyType;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using RigLang.LanguageServer.Wire;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>What is done with a name: shown wherever it stands in the file, renamed over all files, typed over in several places at once.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class NameHandler(Session session)
{
    private const int Read = 2;
    private const int Write = 3;

    /// <summary>Anything but a blank, a quote or a comment sign: what a name may become while it is typed.</summary>
    private const string NamePattern = "[^\\s\"#]+";

    [JsonRpcMethod("textDocument/documentHighlight", UseSingleObjectParameterDeserialization = true)]
    public Task<DocumentHighlight[]> DocumentHighlightAsync(PlaceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            snapshot.Service.Highlights(file, Places.Of(place.Position), token).Select(one => new DocumentHighlight(Places.ToProtocol(one.Range), one.IsMade ? Write : Read)).ToArray(), cancel);

    /// <summary>A refusal is an error, since only an error's words are shown to the person.</summary>
    [JsonRpcMethod("textDocument/prepareRename", UseSingleObjectParameterDeserialization = true)]
    public Task<PrepareRenameResult?> PrepareRenameAsync(PlaceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.OfText, PrepareRenameResult? (snapshot, file, token) =>
            snapshot.Service.RenameTarget(file, Places.Of(place.Position), token) switch
            {
                null => null,
                { Refusal: { } why } => throw Refused(why),
                var target => new PrepareRenameResult(Places.ToProtocol(target.Range), target.Name),
            }, cancel);

    [JsonRpcMethod("textDocument/rename", UseSingleObjectParameterDeserialization = true)]
    public Task<WorkspaceEdit> RenameAsync(RenameParams asked, CancellationToken cancel) =>
        session.AskAsync(asked.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            snapshot.Service.Rename(file, Places.Of(asked.Position), asked.NewName, token) switch
            {
                { Refusal: { } why } => throw Refused(why),
                var answer => Fixes.ToProtocol(answer.Edits, snapshot.Documents, session.Features),
            }, cancel);

    [JsonRpcMethod("textDocument/linkedEditingRange", UseSingleObjectParameterDeserialization = true)]
    public Task<LinkedEditingRanges?> LinkedEditingRangeAsync(PlaceParams place, CancellationToken cancel) =>
        session.AskAsync(place.TextDocument.Uri, ReadSort.OfText, LinkedEditingRanges? (snapshot, file, token) =>
            snapshot.Service.LinkedPlaces(file, Places.Of(place.Position), token) is { IsEmpty: false } places
                ? new LinkedEditingRanges([.. places.Select(Places.ToProtocol)], NamePattern)
                : null, cancel);

    private static LocalRpcException Refused(string why) => new(why) { ErrorCode = ErrorCodes.RequestFailed };
}
