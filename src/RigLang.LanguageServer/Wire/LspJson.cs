using System.Text.Json;
using System.Text.Json.Serialization;
using RigLang.LanguageServer.Protocol;
using StreamJsonRpc;
using StreamJsonRpc.Protocol;

namespace RigLang.LanguageServer.Wire;

/// <summary>How the protocol's records are written and read, decided when the program is built: nothing is looked up by reflection while it runs.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(InitializeParams))]
[JsonSerializable(typeof(InitializeResult))]
[JsonSerializable(typeof(DidChangeWorkspaceFoldersParams))]
[JsonSerializable(typeof(DidChangeConfigurationParams))]
[JsonSerializable(typeof(DidChangeWatchedFilesParams))]
[JsonSerializable(typeof(ConfigurationParams))]
[JsonSerializable(typeof(RegistrationParams))]
[JsonSerializable(typeof(LogMessageParams))]
[JsonSerializable(typeof(DidOpenTextDocumentParams))]
[JsonSerializable(typeof(DidChangeTextDocumentParams))]
[JsonSerializable(typeof(DocumentParams))]
[JsonSerializable(typeof(PlaceParams))]
[JsonSerializable(typeof(StretchParams))]
[JsonSerializable(typeof(ReferenceParams))]
[JsonSerializable(typeof(CodeActionParams))]
[JsonSerializable(typeof(PublishDiagnosticsParams))]
[JsonSerializable(typeof(Hover))]
[JsonSerializable(typeof(CompletionList))]
[JsonSerializable(typeof(Location[]))]
[JsonSerializable(typeof(DocumentSymbol[]))]
[JsonSerializable(typeof(SymbolInformation[]))]
[JsonSerializable(typeof(FoldingRange[]))]
[JsonSerializable(typeof(InlayHint[]))]
[JsonSerializable(typeof(SemanticTokens))]
[JsonSerializable(typeof(TextEdit[]))]
[JsonSerializable(typeof(CodeAction[]))]
[JsonSerializable(typeof(DocumentHighlight[]))]
[JsonSerializable(typeof(RenameParams))]
[JsonSerializable(typeof(PrepareRenameResult))]
[JsonSerializable(typeof(LinkedEditingRanges))]
[JsonSerializable(typeof(SelectionRangeParams))]
[JsonSerializable(typeof(SelectionRange[]))]
[JsonSerializable(typeof(DocumentLink[]))]
[JsonSerializable(typeof(WorkspaceSymbolParams))]
[JsonSerializable(typeof(RenameFilesParams))]
[JsonSerializable(typeof(DeleteFilesParams))]
[JsonSerializable(typeof(WorkspaceEdit))]
[JsonSerializable(typeof(SignatureHelpParams))]
[JsonSerializable(typeof(SignatureHelp))]
[JsonSerializable(typeof(string))]
[JsonSerializable(typeof(int[]))]
[JsonSerializable(typeof(SemanticTokensDeltaParams))]
[JsonSerializable(typeof(SemanticTokensDelta))]
[JsonSerializable(typeof(OnTypeParams))]
[JsonSerializable(typeof(InlayHint))]
[JsonSerializable(typeof(MarkupContent))]
[JsonSerializable(typeof(CodeActionToResolve))]
[JsonSerializable(typeof(System.Text.Json.Nodes.JsonObject))]
[JsonSerializable(typeof(RequestId))]
[JsonSerializable(typeof(CommonErrorData))]
[JsonSerializable(typeof(JsonElement))]
[JsonSerializable(typeof(object))]
internal sealed partial class LspJson : JsonSerializerContext;
