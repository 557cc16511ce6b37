using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary><c>textDocument/signatureHelp</c>: what the line being written takes. By itself only for lines of several parts; a single value needs no help unasked.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class SignatureHandler(Session session)
{
    private const int Invoked = 1;

    [JsonRpcMethod("textDocument/signatureHelp", UseSingleObjectParameterDeserialization = true)]
    public Task<SignatureHelp?> SignatureHelpAsync(SignatureHelpParams asked, CancellationToken cancel) =>
        session.AskAsync(asked.TextDocument.Uri, ReadSort.Lasting, SignatureHelp? (snapshot, file, token) =>
            snapshot.Service.Signature(file, Places.Of(asked.Position), token) is { } card && (card.Parts.Length > 1 || asked.Context is null or { TriggerKind: Invoked })
                ? new SignatureHelp([ToProtocol(card)], 0, (uint)(card.Active ?? card.Parts.Length))
                : null, cancel);

    private SignatureInformation ToProtocol(SignatureCard card) => new(
        card.Label,
        Markup.Of(card.Documentation, session.Features.MarkdownSignature),
        [.. card.Parts.Select(part => new ParameterInformation(
            session.Features.SignatureOffsets ? new[] { part.Start, part.End } : card.Label[part.Start..part.End],
            Markup.Of(part.Words, session.Features.MarkdownSignature)))]);
}
