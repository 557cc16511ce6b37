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

/// <summary>A short computed value shown behind a line's text; the long story is in the tooltip, which is written when somebody asks for it.</summary>
public sealed class InlayNote(LinePosition position, string label, Func<string> tooltip)
{
    private readonly Lazy<string> tooltip = new(tooltip);

    public LinePosition Position { get; } = position;

    public string Label { get; } = label;

    public string Tooltip => tooltip.Value;

    public override string ToString() => $"{Position.Line}:{Position.Character} {Label}: {Tooltip}";
}

/// <summary>What a line takes behind its keyword, and which part of it the caret is at.</summary>
/// <param name="Label">The whole line: <c>item NAME MASS at PLACE [high HIGH]</c>.</param>
/// <param name="Documentation">Markdown.</param>
/// <param name="Active">Null where the caret is behind all of it.</param>
public sealed record SignatureCard(string Label, string Documentation, ImmutableArray<SignaturePart> Parts, int? Active);

/// <summary>One part of a signature: its place in the label, and what may stand there.</summary>
public readonly record struct SignaturePart(int Start, int End, string Words);

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
