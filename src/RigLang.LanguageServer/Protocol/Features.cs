namespace RigLang.LanguageServer.Protocol;

internal sealed record Hover(MarkupContent Contents, TextRange Range);

internal sealed record CompletionList(bool IsIncomplete, CompletionItem[] Items);

/// <param name="InsertTextFormat">1 plain text, 2 a snippet with tab stops.</param>
internal sealed record CompletionItem(
    string Label, int Kind, int InsertTextFormat, TextEdit TextEdit, string? Detail = null, MarkupContent? Documentation = null, string? SortText = null);

internal sealed record ReferenceParams(TextDocumentIdentifier TextDocument, Position Position, ReferenceContext Context);

internal sealed record ReferenceContext(bool IncludeDeclaration);

internal sealed record DocumentSymbol(
    string Name, int Kind, TextRange Range, TextRange SelectionRange, string? Detail = null, DocumentSymbol[]? Children = null);

/// <summary>The older, flat outline.</summary>
internal sealed record SymbolInformation(string Name, int Kind, Location Location, string? ContainerName = null);

internal sealed record FoldingRange(uint StartLine, uint EndLine, string? Kind = null);

internal sealed record InlayHint(Position Position, string Label, bool PaddingLeft, MarkupContent? Tooltip = null);

/// <summary>Five numbers a token, each place relative to the token before it.</summary>
internal sealed record SemanticTokens(uint[] Data);
