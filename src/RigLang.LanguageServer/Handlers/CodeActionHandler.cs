using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using RigLang.Model.Files;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/codeAction</c>: the fixes of findings, each with the diagnostics it cures, and other changes offered at the place.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class CodeActionHandler(Session session)
{
    [JsonRpcMethod("textDocument/codeAction", UseSingleObjectParameterDeserialization = true)]
    public Task<CodeAction[]> CodeActionAsync(CodeActionParams asked, CancellationToken cancel) =>
        session.AskAsync(asked.TextDocument.Uri, ReadSort.OfText, (snapshot, file, token) =>
        {
            var fixes = snapshot.Service.Fixes(file, Places.Of(asked.Range), token);
            var findings = fixes.IsEmpty ? [] : snapshot.Service.Findings(file, token);
            var actions = fixes.Select(fix => ToProtocol(fix, [.. findings.Where(f => f.Fixes.Any(other => Fixes.Same(other, fix)))], file, snapshot));
            return actions.Where(action => Wanted(action.Kind, asked.Context.Only)).ToArray();
        }, cancel);

    private CodeAction ToProtocol(EditorFix fix, EditorFinding[] cured, FileId file, Snapshot snapshot) => new(
        fix.Title,
        cured.Length > 0 ? CodeActionKind.QuickFix : CodeActionKind.Refactor,
        Fixes.ToProtocol(fix, snapshot.Documents, session.Features),
        cured.Length > 0 ? [.. cured.Select(f => session.Diagnostics.Translate(f, file, snapshot.Documents))] : null,
        fix.IsPreferred ? true : null);

    /// <summary>A kind asked for takes in the kinds below it: <c>refactor</c> is wanted where <c>""</c> or <c>refactor</c> is.</summary>
    private static bool Wanted(string kind, string[]? only) =>
        only is null || only.Any(wanted => wanted.Length == 0 || kind == wanted || kind.StartsWith(wanted + ".", StringComparison.Ordinal));
}
