using System.Collections.Immutable;

namespace RigLang.Analysis.Tracking;

/// <summary>A computation carried out for a subject: its value and everything it read.</summary>
public abstract class Node
{
    private protected Node(
        Computation computation, ISubject subject, ImmutableArray<Read> reads, ImmutableArray<Node> considered, MissingFact? missing, bool isEstimated, bool applies,
        string? refusal)
    {
        Computation = computation;
        Subject = subject;
        Reads = reads;
        Considered = considered;
        Missing = missing;
        IsEstimated = isEstimated;
        Applies = applies;
        Refusal = refusal;
    }

    public Computation Computation { get; }

    public ISubject Subject { get; }

    public ImmutableArray<Read> Reads { get; }

    /// <summary>What was looked at and then done without, or only to choose a way: no reason for the number, yet with other facts the number might rest on it.</summary>
    public ImmutableArray<Node> Considered { get; }

    /// <summary>Every computation that a change could reach this one through.</summary>
    public IEnumerable<Node> Under => Reads.OfType<ComputationRead>().Select(read => read.Node).Concat(Considered);

    /// <summary>The first fact missing, its own or of what it read; null when there is none.</summary>
    public MissingFact? Missing { get; }

    /// <summary>Whether an estimate went into it anywhere.</summary>
    public bool IsEstimated { get; }

    /// <summary>False where the question doesn't arise for the subject; such a result isn't shown.</summary>
    public bool Applies { get; }

    /// <summary>Why there is no answer though no fact is missing: "the drives are too much alike …"; null where nothing is said.</summary>
    public string? Refusal { get; }

    /// <summary>The value as a number; NaN for what is no single number.</summary>
    public virtual double Number => double.NaN;

    /// <summary>A number came out, nothing it needed was missing, and nothing was refused.</summary>
    public bool IsComputed => Applies && Missing is null && Refusal is null && !double.IsNaN(Number);
}

/// <summary>With the value in its own type.</summary>
public sealed class Node<T> : Node
{
    internal Node(
        Computation computation, ISubject subject, T value, ImmutableArray<Read> reads, ImmutableArray<Node> considered, MissingFact? missing, bool isEstimated, bool applies,
        string? refusal)
        : base(computation, subject, reads, considered, missing, isEstimated, applies, refusal)
    {
        Value = value;
    }

    public T Value { get; }

    public override double Number => Value is double number ? number : double.NaN;
}
