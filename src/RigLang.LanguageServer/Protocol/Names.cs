namespace RigLang.LanguageServer.Protocol;

/// <param name="Kind">2 where the name is used, 3 where it is made.</param>
internal sealed record DocumentHighlight(TextRange Range, int Kind);

internal sealed record RenameParams(TextDocumentIdentifier TextDocument, Position Position, string NewName);

internal sealed record PrepareRenameResult(TextRange Range, string Placeholder);

/// <param name="WordPattern">What of the text typed there still belongs to the name.</param>
internal sealed record LinkedEditingRanges(TextRange[] Ranges, string WordPattern);

internal sealed record SelectionRangeParams(TextDocumentIdentifier TextDocument, Position[] Positions);

internal sealed record SelectionRange(TextRange Range, SelectionRange? Parent = null);

internal sealed record DocumentLink(TextRange Range, string Target, string? Tooltip = null);

internal sealed record WorkspaceSymbolParams(string Query);
