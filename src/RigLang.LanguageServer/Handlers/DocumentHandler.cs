using System.Collections.Immutable;
using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Translate;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>Keeps the text of open documents in step with the editor.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class DocumentHandler(Session session)
{
    [JsonRpcMethod("textDocument/didOpen", UseSingleObjectParameterDeserialization = true)]
    public void DidOpen(DidOpenTextDocumentParams opened)
    {
        var document = opened.TextDocument;
        var file = FileUri.Decode(document.Uri);
        session.Open();
        session.Queue.Write("textDocument/didOpen", file, writer =>
        {
            writer.Documents = writer.Documents.With(file, document.Uri, document.Version);
            writer.Workspace.Open(file, document.Text);
        });
    }

    [JsonRpcMethod("textDocument/didChange", UseSingleObjectParameterDeserialization = true)]
    public void DidChange(DidChangeTextDocumentParams changed)
    {
        var document = changed.TextDocument;
        var file = FileUri.Decode(document.Uri);
        var changes = changed.ContentChanges.Select(c => (c.Range is { } range ? Places.Of(range) : (LineRange?)null, c.Text)).ToImmutableArray();
        session.Queue.Write("textDocument/didChange", file, writer =>
        {
            if (!writer.Documents.Contains(file))
            {
                session.Log.Warning($"textDocument/didChange: {file.Name} is not open, so its change was not used");
                return;
            }

            writer.Documents = writer.Documents.With(file, document.Uri, document.Version);
            writer.Workspace.Change(file, changes);
        });
    }

    [JsonRpcMethod("textDocument/didClose", UseSingleObjectParameterDeserialization = true)]
    public void DidClose(DocumentParams closed)
    {
        var file = FileUri.Decode(closed.TextDocument.Uri);
        session.Queue.Write("textDocument/didClose", file, writer =>
        {
            if (!writer.Documents.Contains(file))
            {
                return;
            }

            writer.Documents = writer.Documents.Without(file);
            writer.Workspace.Close(file);
        });
    }
}
