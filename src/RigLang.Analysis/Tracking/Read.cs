using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tracking;

/// <summary>One read that a computation made: of a fact, or of another computation.</summary>
public abstract record Read;

/// <summary>A fact that was read, and where its value came from.</summary>
/// <param name="Line">The line that says it; null where something stands in.</param>
/// <param name="Value">SI; NaN where the fact is no single quantity or is missing.</param>
/// <param name="HalfWidth">SI, two standard deviations; zero where nothing is said.</param>
/// <param name="Inner">What an estimate read in turn.</param>
public sealed record FactRead(
    Block Block, FactDeclaration Fact, Fact? Line, ReadOrigin Origin, double Value, double HalfWidth, ImmutableArray<Read> Inner) : Read
{
    /// <summary>The line with the values that hold in the study, where they aren't those that the file says.</summary>
    public Fact? Held { get; init; }

    public bool IsEstimated => Origin is ReadOrigin.Estimate or ReadOrigin.StandIn;
}

/// <summary>Where a fact's value came from.</summary>
public enum ReadOrigin
{
    /// <summary>A line of the block, its own or inherited.</summary>
    Written,

    /// <summary>Put in place of what the files say, for a question of the kind "what if".</summary>
    Varied,

    /// <summary>Found for a line that asks for it with <c>?</c>.</summary>
    Solved,

    /// <summary>What no line means by the language's own rule.</summary>
    Default,

    /// <summary>The rig's practice assumes it.</summary>
    Practice,

    /// <summary>The documented estimate.</summary>
    Estimate,

    /// <summary>Something that the result itself put in its place, as documented.</summary>
    StandIn,

    /// <summary>Not written, and the result does without.</summary>
    Absent,

    /// <summary>Not written, and the result can't do without.</summary>
    Missing,
}

/// <summary>Another computation that was read.</summary>
public sealed record ComputationRead(Node Node) : Read;
