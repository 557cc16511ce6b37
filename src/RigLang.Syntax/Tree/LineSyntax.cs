using System.Collections.Immutable;
using RigLang.Syntax.Checks;

namespace RigLang.Syntax.Tree;

/// <summary>
/// One line, read by itself. It doesn't know where it stands, so a line that an edit leaves alone is kept as it is.
/// Everything in it is counted from its own first character; <see cref="Text"/> and <see cref="Break"/> together are the line, to the letter.
/// </summary>
public sealed record LineSyntax
{
    /// <summary>The line without its break.</summary>
    public required string Text { get; init; }

    public required LineBreak Break { get; init; }

    /// <summary>Characters before the first that isn't a blank or a tab.</summary>
    public required int IndentLength { get; init; }

    /// <summary>The column where the statement begins; a tab reaches to the next multiple of four.</summary>
    public required int IndentColumns { get; init; }

    /// <summary>Null on a blank line and on one that holds only a comment.</summary>
    public required StatementSyntax? Statement { get; init; }

    /// <summary>From the <c>#</c> to the line's end.</summary>
    public required TextSpan? Comment { get; init; }

    public required ImmutableArray<LineFinding> Findings { get; init; }

    public string TextOf(TextSpan span) => Text.Substring(span.Start, span.Length);

    /// <summary>True if the reader has reported an error on this stretch; whoever looks closer has nothing to add then.</summary>
    public bool IsReported(TextSpan span)
    {
        foreach (var finding in Findings)
        {
            if (finding.Check.Severity == Severity.Error && finding.Span.Start < span.End && span.Start < finding.Span.End)
            {
                return true;
            }
        }

        return false;
    }
}
