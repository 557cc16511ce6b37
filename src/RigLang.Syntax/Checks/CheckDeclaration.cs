using System.Collections.Immutable;

namespace RigLang.Syntax.Checks;

/// <summary>
/// One thing the tool can report, declared once: its page, its place in <c>explain</c>, and what <c>allow</c> names are all made from this.
/// The logic that fires it stands in the same file. Codes and slugs are never renumbered or used again.
/// </summary>
public sealed record CheckDeclaration
{
    /// <summary>For instance <c>RL301</c>. The hundred is the family.</summary>
    public required string Code { get; init; }

    /// <summary>For instance <c>axle-over-rating</c>; what a person writes behind <c>allow</c>.</summary>
    public required string Slug { get; init; }

    public required Severity Severity { get; init; }

    /// <summary>One sentence: what is reported.</summary>
    public required string Summary { get; init; }

    /// <summary>Why it matters to somebody with a trailer behind them.</summary>
    public required string Why { get; init; }

    /// <summary>A file, or the part of one, that provokes the finding.</summary>
    public required string Bad { get; init; }

    /// <summary>The same, mended.</summary>
    public required string Good { get; init; }

    /// <summary>Other files that the two examples name, such as tracks; they lie in the same folder.</summary>
    public ImmutableArray<(string Path, string Text)> Beside { get; init; } = [];

    /// <summary>What to do about it.</summary>
    public required string Fix { get; init; }

    /// <summary>The version that brought the check.</summary>
    public string Since { get; init; } = "0.1";

    /// <summary>Where the limit comes from: a standard, a law with its date, "common practice", or null where the rule is the language's own.</summary>
    public string? Source { get; init; }

    /// <summary>False for findings that no reason can make right, such as text that is not the language.</summary>
    public bool CanBeAllowed { get; init; } = true;

    public CheckFamily Family => (CheckFamily)(Code[2] - '0');

    public override string ToString() => $"{Code} {Slug}";
}
