using System.Collections.Immutable;
using RigLang.Syntax;

namespace RigLang.Editing;

/// <summary>What a hover shows, in Markdown, and the text it is about.</summary>
public sealed record HoverCard(LineRange Range, string Markdown);

/// <summary>What a completion offers.</summary>
public sealed record CompletionEntry(
    string Label, CompletionSort Sort, string Detail, string Documentation, TextReplacement Edit, bool IsSnippet, string SortKey);

/// <summary>What kind of thing a completion is.</summary>
public enum CompletionSort
{
    Declaration,
    Fact,
    Block,
    Choice,
    Name,
    Unit,
    Value,
    Result,
    Check,
    File,
}

/// <summary>A declaration or block in the outline.</summary>
public sealed record OutlineEntry(
    string Name, string Detail, OutlineSort Sort, LineRange Range, LineRange NameRange, ImmutableArray<OutlineEntry> Children);

/// <summary>What kind of thing an outline entry is.</summary>
public enum OutlineSort
{
    Vehicle,
    Trailer,
    Hitch,
    Load,
    Rig,
    Trip,
    Weighing,
    Run,
    Practice,
    Block,
    File,
}

/// <summary>Lines that fold together under the first.</summary>
public readonly record struct FoldStretch(int FirstLine, int LastLine, bool IsComment);

/// <summary>A short computed value shown behind a line's text; the long story is in the tooltip.</summary>
public sealed record InlayNote(LinePosition Position, string Label, string Tooltip);

/// <summary>A coloured stretch for semantic tokens.</summary>
public readonly record struct MeaningToken(int Line, int Character, int Length, MeaningSort Sort, bool IsDeclaration);

/// <summary>What a stretch of text means.</summary>
public enum MeaningSort
{
    Keyword,
    DeclarationName,
    Key,
    Reference,
    Number,
    Unit,
    Choice,
    Joint,
    Sign,
    Text,
    Comment,
    Unknown,
}
