using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;

namespace RigLang.Analysis.Solving;

/// <summary>What came of a question.</summary>
/// <param name="Subject">What the result is a result of, in the study that was asked; null where there is none that the fact moves.</param>
/// <param name="Value">SI; the value found or, where the wish can't be met, the one that comes nearest; NaN where there is none.</param>
/// <param name="Reached">SI; the result with it.</param>
public sealed record Answer(Unknown Unknown, ISubject? Subject, AnswerSort Sort, double Value, double Reached)
{
    /// <summary>Other values (SI) that meet the wish as well, ascending.</summary>
    public ImmutableArray<double> Others { get; init; } = [];

    /// <summary>SI; where was looked.</summary>
    public (double Low, double High) Range { get; init; }

    /// <summary>Why the wish can't be met, or why it is met best at this place.</summary>
    public Binding Binds { get; init; }

    /// <summary>Results that do rest on the fact, where the one asked for doesn't.</summary>
    public ImmutableArray<string> Instead { get; init; } = [];

    /// <summary>What the result lacks.</summary>
    public MissingFact? Missing { get; init; }

    /// <summary>Why it was refused, in words that follow "because".</summary>
    public string Why { get; init; } = "";

    /// <summary>The questions that it hangs together with.</summary>
    public ImmutableArray<Unknown> With { get; init; } = [];

    /// <summary>How many times the result was computed to find it: what a question costs, on any machine.</summary>
    public int Looks { get; init; }

    /// <summary>Whether the fact has a value now, which all other results read.</summary>
    public bool IsFound => Sort == AnswerSort.Found;
}

/// <summary>How a question ended.</summary>
public enum AnswerSort
{
    /// <summary>There is a value that meets the wish.</summary>
    Found,

    /// <summary>No value in the range meets it.</summary>
    OutOfReach,

    /// <summary>The result doesn't rest on the fact, or is a result of something that isn't in sight of the line.</summary>
    NoEffect,

    /// <summary>The result isn't computed anywhere in the range.</summary>
    NotComputed,

    /// <summary>It hangs together with others in a way that isn't solved.</summary>
    Refused,
}

/// <summary>What keeps a result from going on.</summary>
public enum Binding
{
    None,

    /// <summary>The lower end of the range.</summary>
    LowEnd,

    /// <summary>The upper end of the range.</summary>
    HighEnd,

    /// <summary>The result turns round there: more of the fact and less of it lead away.</summary>
    Turn,

    /// <summary>From there on the fact changes nothing more: something else binds.</summary>
    Flat,

    /// <summary>The result jumps over the wished value there.</summary>
    Jump,

    /// <summary>Beyond it the result isn't computed.</summary>
    NotComputed,
}
