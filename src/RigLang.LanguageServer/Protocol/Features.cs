namespace RigLang.LanguageServer.Protocol;

internal sealed record Hover(MarkupContent Contents, TextRange Range);

internal sealed record CompletionList(bool IsIncomplete, CompletionItem[] Items);

/// <param name="InsertTextFormat">1 plain text, 2 a snippet with tab stops.</param>
internal sealed record CompletionItem(
    string Label, int Kind, int InsertTextFormat, TextEdit TextEdit, string? Detail = null, MarkupContent? Documentation = null, string? SortText = null,
    CompletionData? Data = null);

/// <summary>Which entry of which list it is, for the documentation that is asked for later.</summary>
internal sealed record CompletionData(int List, int Item);

internal sealed record ReferenceParams(TextDocumentIdentifier TextDocument, Position Position, ReferenceContext Context);

internal sealed record ReferenceContext(bool IncludeDeclaration);

internal sealed record DocumentSymbol(
    string Name, int Kind, TextRange Range, TextRange SelectionRange, string? Detail = null, DocumentSymbol[]? Children = null);

/// <summary>The older, flat outline.</summary>
internal sealed record SymbolInformation(string Name, int Kind, Location Location, string? ContainerName = null);

internal sealed record FoldingRange(uint StartLine, uint EndLine, string? Kind = null);

internal sealed record InlayHint(Position Position, string Label, bool PaddingLeft = false, MarkupContent? Tooltip = null, InlayHintData? Data = null);

/// <summary>Whose hint it is, for the tooltip that is asked for later.</summary>
internal sealed record InlayHintData(string Uri);

/// <summary>Five numbers a token, each place relative to the token before it.</summary>
internal sealed record SemanticTokens(uint[] Data, string? ResultId = null);

internal sealed record SemanticTokensDeltaParams(TextDocumentIdentifier TextDocument, string PreviousResultId);

internal sealed record SemanticTokensDelta(SemanticTokensEdit[] Edits, string? ResultId = null);

/// <summary>Numbers of the data before that go, from the one at <paramref name="Start"/> on, and what comes in their place.</summary>
internal sealed record SemanticTokensEdit(uint Start, uint DeleteCount, uint[] Data);

internal sealed record OnTypeParams(TextDocumentIdentifier TextDocument, Position Position, string Ch);
