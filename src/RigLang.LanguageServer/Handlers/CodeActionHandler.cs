using System.Text.Json;
using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using RigLang.LanguageServer.Wire;
using RigLang.Model.Files;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>
/// <c>textDocument/codeAction</c>: what cures or accepts findings, each with the diagnostics it is for, and other changes offered at the place. Clients that can
/// ask later get the edits of a change when it is taken.
/// </summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class CodeActionHandler(Session session)
{
    [JsonRpcMethod("textDocument/codeAction", UseSingleObjectParameterDeserialization = true)]
    public Task<CodeAction[]> CodeActionAsync(CodeActionParams asked, CancellationToken cancel) =>
        session.AskAsync(asked.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
            snapshot.Service.Changes(file, Places.Of(asked.Range), token).Where(change => Wanted(KindOf(change), asked.Context.Only))
                .Select(change => session.Features.LazyCodeActions
                    ? ToProtocol(change, file, snapshot) with { Data = new CodeActionData(asked.TextDocument.Uri, snapshot.Documents.VersionOf(file), asked.Range) }
                    : ToProtocol(change, file, snapshot) with { Edit = Fixes.ToProtocol(change.Edits, snapshot.Documents, session.Features) }).ToArray(), cancel);

    /// <summary>The action with its edits. They would be about another text if it had changed since.</summary>
    [JsonRpcMethod("codeAction/resolve", UseSingleObjectParameterDeserialization = true)]
    public Task<JsonElement> ResolveAsync(JsonElement action, CancellationToken cancel)
    {
        var asked = JsonSerializer.Deserialize(action, LspJson.Default.CodeActionToResolve)!;
        return asked.Data is not { } data ? Task.FromResult(action) : session.AskAsync(data.Uri, ReadSort.OfText, (snapshot, file, token) =>
        {
            var change = snapshot.Documents.VersionOf(file) != data.Version
                ? null
                : snapshot.Service.Changes(file, Places.Of(data.Range), token).FirstOrDefault(change => change.Title == asked.Title && KindOf(change) == asked.Kind);
            return change is null
                ? throw new LocalRpcException("the text has changed since") { ErrorCode = ErrorCodes.ContentModified }
                : Filled.With(action, "edit", JsonSerializer.SerializeToNode(Fixes.ToProtocol(change.Edits, snapshot.Documents, session.Features), LspJson.Default.WorkspaceEdit));
        }, cancel);
    }

    private CodeAction ToProtocol(OfferedChange change, FileId file, Snapshot snapshot) => new(
        change.Title,
        KindOf(change),
        Diagnostics: change.Cures.IsEmpty ? null : [.. change.Cures.Select(f => session.Diagnostics.Translate(f, file, snapshot.Documents))],
        IsPreferred: change.IsPreferred ? true : null);

    private static string KindOf(OfferedChange change) => change.Sort switch
    {
        ChangeSort.Cure or ChangeSort.CureAlike or ChangeSort.Accept => CodeActionKind.QuickFix,
        ChangeSort.CureFile => CodeActionKind.FixAll,
        ChangeSort.Extract => CodeActionKind.Extract,
        _ => CodeActionKind.Rewrite,
    };

    /// <summary>A kind asked for takes in the kinds below it: <c>refactor</c> is wanted where <c>""</c> or <c>refactor</c> is. What mends a whole file only comes to those who ask for it.</summary>
    private static bool Wanted(string kind, string[]? only) => only is null
        ? kind != CodeActionKind.FixAll
        : only.Any(wanted => wanted.Length == 0 || kind == wanted || kind.StartsWith(wanted + ".", StringComparison.Ordinal));
}
