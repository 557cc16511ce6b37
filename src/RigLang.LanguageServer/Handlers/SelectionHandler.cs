using System.Collections.Immutable;
using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/selectionRange</c>: selections that widen by meaning.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class SelectionHandler(Session session)
{
    [JsonRpcMethod("textDocument/selectionRange", UseSingleObjectParameterDeserialization = true)]
    public Task<SelectionRange[]> SelectionRangeAsync(SelectionRangeParams asked, CancellationToken cancel) =>
        session.AskAsync(asked.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            asked.Positions.Select(position => Nested(snapshot.Service.SelectionRanges(file, Places.Of(position), token), position)).ToArray(), cancel);

    /// <summary>The protocol wants one answer for each position, a place outside the text included.</summary>
    private static SelectionRange Nested(ImmutableArray<LineRange> ranges, Position position)
    {
        SelectionRange? around = null;
        for (var index = ranges.Length - 1; index >= 0; index--)
        {
            around = new SelectionRange(Places.ToProtocol(ranges[index]), around);
        }

        return around ?? new SelectionRange(new TextRange(position, position));
    }
}
