using RigLang.Editing;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.Syntax;

namespace RigLang.LanguageServer.Translate;

/// <summary>Positions and ranges both ways.</summary>
internal static class Places
{
    internal static LinePosition Of(Position position) => new((int)Math.Min(position.Line, int.MaxValue), (int)Math.Min(position.Character, int.MaxValue));

    internal static LineRange Of(TextRange range) => new(Of(range.Start), Of(range.End));

    internal static Position ToProtocol(LinePosition position) => new((uint)position.Line, (uint)position.Character);

    internal static TextRange ToProtocol(LineRange range) => new(ToProtocol(range.Start), ToProtocol(range.End));

    internal static TextEdit ToProtocol(TextReplacement replacement) => new(ToProtocol(replacement.Range), replacement.NewText);

    internal static Location ToProtocol(FilePlace place, OpenDocuments documents) => new(documents.UriOf(place.File), ToProtocol(place.Range));
}
