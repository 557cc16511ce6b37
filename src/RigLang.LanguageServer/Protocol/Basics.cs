namespace RigLang.LanguageServer.Protocol;

// The parts of the Language Server Protocol that this server speaks, each written once. A member is nullable when the protocol lets it be absent;
// an absent member is not written. Names on the wire are these names in camel case.

/// <summary>Line and UTF-16 unit, both from 0.</summary>
internal readonly record struct Position(uint Line, uint Character);

/// <summary>The protocol's <c>Range</c>; the end is not part of it.</summary>
internal readonly record struct TextRange(Position Start, Position End);

internal sealed record Location(string Uri, TextRange Range);

internal sealed record TextDocumentIdentifier(string Uri);

internal sealed record TextEdit(TextRange Range, string NewText);

internal sealed record MarkupContent(string Kind, string Value);

/// <summary>Requests that carry a document and nothing else that is read here.</summary>
internal sealed record DocumentParams(TextDocumentIdentifier TextDocument);

/// <summary>Requests at a place in a document.</summary>
internal sealed record PlaceParams(TextDocumentIdentifier TextDocument, Position Position);

/// <summary>Requests about a stretch of a document.</summary>
internal sealed record StretchParams(TextDocumentIdentifier TextDocument, TextRange Range);
