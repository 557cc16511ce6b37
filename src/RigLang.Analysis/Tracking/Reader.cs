using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Reading;

namespace RigLang.Analysis.Tracking;

/// <summary>The reader that a computation gets: notes every read, the first one missing, and whether anything was estimated.</summary>
public sealed class Reader : IFactReader
{
    private readonly Study study;
    private readonly ImmutableArray<Read>.Builder reads = ImmutableArray.CreateBuilder<Read>();
    private readonly ImmutableArray<Node>.Builder considered = ImmutableArray.CreateBuilder<Node>();
    private MissingFact? missing;
    private bool isEstimated;
    private bool applies = true;
    private string? refusal;

    internal Reader(Study study)
    {
        this.study = study;
    }

    /// <summary>True once a read found nothing: a costly computation may stop early, its value won't be used.</summary>
    public bool HasMissing => missing is not null;

    public double Quantity(Block block, FactDeclaration fact) => Note(Look(block, fact), isNeeded: true).Value;

    public double? QuantityIfKnown(Block block, FactDeclaration fact)
    {
        var read = Note(Look(block, fact), isNeeded: false);
        return double.IsNaN(read.Value) ? null : read.Value;
    }

    /// <summary>The same with its half-width (SI, 19 times out of 20): as written, or the spread of what stands in; zero where nobody knows one.</summary>
    public (double Value, double HalfWidth) Uncertain(Block block, FactDeclaration fact)
    {
        var read = Note(Look(block, fact), isNeeded: true);
        return (read.Value, read.HalfWidth);
    }

    public string? Word(Block block, FactDeclaration fact) => Line(block, fact)?.WordOf(Signature.ValueRole);

    public string? WordIfKnown(Block block, FactDeclaration fact) => LineIfWritten(block, fact)?.WordOf(Signature.ValueRole);

    public Fact? Line(Block block, FactDeclaration fact) => AsItHolds(Note(LookLine(block, fact), isNeeded: true).Line);

    public Fact? LineIfWritten(Block block, FactDeclaration fact) => AsItHolds(Note(LookLine(block, fact), isNeeded: false).Line);

    /// <summary>Whether a line says the fact, be it whole or not, or a value is tried in its place. Noted, since what follows may hang on it.</summary>
    public bool IsWritten(Block block, FactDeclaration fact)
    {
        var isTried = study.Variation?.Find(FactRef.Of(block, fact)) is not null;
        Note(isTried ? Look(block, fact) : LookWritten(block, fact) ?? LookLine(block, fact), isNeeded: false);
        return isTried || block.Find(fact) is not null;
    }

    public IReadOnlyList<Fact> Lines(Block block, FactDeclaration fact)
    {
        var lines = ImmutableArray.CreateBuilder<Fact>();
        foreach (var line in block.All(fact))
        {
            var now = AsItHolds(line)!;
            // An amount that is asked for and not found yet can't be done without, and isn't zero.
            var isOpen = now.IsAsked;
            if (!isOpen && !now.IsComplete)
            {
                continue;
            }

            Note(isOpen ? new FactRead(block, fact, line, ReadOrigin.Missing, double.NaN, 0, []) : Read(block, fact, line, now, double.NaN), isNeeded: true);
            if (!isOpen)
            {
                lines.Add(now);
            }
        }

        return lines.ToImmutable();
    }

    public double Figure(FactDeclaration figure) => Quantity(Figures, figure);

    /// <summary>A figure that nothing stands in for; null unless a practice assumes it.</summary>
    public double? FigureIfAssumed(FactDeclaration figure) => QuantityIfKnown(Figures, figure);

    public void StandIn(Block block, FactDeclaration fact)
    {
        reads.Add(new FactRead(block, fact, null, ReadOrigin.StandIn, double.NaN, 0, []));
        isEstimated = true;
    }

    /// <summary>Notes that the result can't be computed without this fact.</summary>
    public void Need(Block block, FactDeclaration fact) => Note(new FactRead(block, fact, null, ReadOrigin.Missing, double.NaN, 0, []), isNeeded: true);

    /// <summary>Notes that the question doesn't arise for this subject: the couple of bars that a rig doesn't have.</summary>
    public double NotApplicable()
    {
        applies = false;
        return double.NaN;
    }

    /// <summary>Notes why there is no answer though every fact is there; the words follow "not computed: ".</summary>
    public double Refuse(string why)
    {
        refusal ??= why;
        return double.NaN;
    }

    /// <summary>The value of another computation, which is missing here too when it is missing there.</summary>
    public T Get<TSubject, T>(Computation<TSubject, T> computation, TSubject subject)
        where TSubject : ISubject
    {
        var node = subject.Study.Compute(computation, subject);
        reads.Add(new ComputationRead(node));
        missing ??= node.Missing;
        applies &= node.Applies;
        refusal ??= node.Refusal;
        isEstimated |= node.IsEstimated;
        return node.Value;
    }

    /// <summary>The value of another computation, or null when it can't be computed; this result does without it then.</summary>
    public double? GetIfKnown<TSubject>(Computation<TSubject, double> computation, TSubject subject)
        where TSubject : ISubject
    {
        var node = subject.Study.Compute(computation, subject);
        if (!node.IsComputed)
        {
            considered.Add(node);
            return null;
        }

        reads.Add(new ComputationRead(node));
        isEstimated |= node.IsEstimated;
        return node.Value;
    }

    /// <summary>The same, where a plain assumption takes its place: the result is marked as estimated, for the fact that was missing.</summary>
    public double? GetOrStandIn<TSubject>(Computation<TSubject, double> computation, TSubject subject)
        where TSubject : ISubject
    {
        if (GetIfKnown(computation, subject) is { } value)
        {
            return value;
        }

        if (subject.Study.Compute(computation, subject).Missing is { } missing)
        {
            StandIn(missing.Block, missing.Fact);
        }

        return null;
    }

    /// <summary>The same as <see cref="GetIfKnown"/> for values that are no single number; false, and nothing noted, when it can't be computed.</summary>
    public bool TryGet<TSubject, T>(Computation<TSubject, T> computation, TSubject subject, out T value)
        where TSubject : ISubject
    {
        var node = subject.Study.Compute(computation, subject);
        value = node.Value;
        if (!node.Applies || node.Missing is not null || node.Refusal is not null)
        {
            considered.Add(node);
            return false;
        }

        reads.Add(new ComputationRead(node));
        isEstimated |= node.IsEstimated;
        return true;
    }

    /// <summary>Looks at another computation only to choose a way: it is no reason for this one, and what it lacks isn't missing here.</summary>
    public Node<T> Consider<TSubject, T>(Computation<TSubject, T> computation, TSubject subject)
        where TSubject : ISubject
    {
        var node = subject.Study.Compute(computation, subject);
        considered.Add(node);
        return node;
    }

    /// <summary>No infinity leaves a computation: what can't be reckoned is NaN, here as in the mechanics.</summary>
    internal Node<T> Finish<T>(Computation computation, ISubject subject, T value) => new(
        computation, subject, value is double number && double.IsInfinity(number) ? (T)(object)double.NaN : value, reads.DrainToImmutable(), considered.DrainToImmutable(),
        missing, isEstimated, applies, refusal);

    /// <summary>The block of the figures that no file writes.</summary>
    internal static Block Figures { get; } = new(FigureFacts.Block, "#", null, [], []);

    private FactRead Note(FactRead read, bool isNeeded)
    {
        if (read.Origin == ReadOrigin.Missing && !isNeeded)
        {
            read = read with { Origin = ReadOrigin.Absent };
        }

        reads.Add(read);
        isEstimated |= read.IsEstimated;
        if (read.Origin == ReadOrigin.Missing)
        {
            missing ??= new MissingFact(read.Block, read.Fact, FirstMissing(read.Inner));
        }

        return read;
    }

    private static MissingFact? FirstMissing(ImmutableArray<Read> reads) =>
        reads.OfType<FactRead>().FirstOrDefault(read => read.Origin == ReadOrigin.Missing) is { } read ? new MissingFact(read.Block, read.Fact) : null;

    private FactRead Look(Block block, FactDeclaration fact)
    {
        if (study.Variation is not { } variation)
        {
            return LookInFiles(block, fact);
        }

        return variation.Find(FactRef.Of(block, fact)) switch
        {
            { Origin: ReadOrigin.Solved } solved => new FactRead(block, fact, block.Find(fact), ReadOrigin.Solved, solved.Value, 0, []),
            // What somebody varies is as uncertain as it was.
            { } varied => LookInFiles(block, fact) with { Line = block.Find(fact), Origin = varied.Origin, Value = varied.Value, Inner = [] },
            null when LookInFiles(block, fact) is var read => read is { Origin: ReadOrigin.Practice, Line: { } assume } && variation.Find(FactRef.Of(block, assume)) is { } other
                ? read with { Value = other.Value }
                : read,
        };
    }

    private FactRead LookInFiles(Block block, FactDeclaration fact)
    {
        if (LookWritten(block, fact) is { } written)
        {
            return written;
        }

        if (study.Assumptions.TryGetValue(fact, out var assumed))
        {
            return new FactRead(block, fact, assumed.Line, ReadOrigin.Practice, assumed.Value, assumed.HalfWidth, []);
        }

        return fact.Estimate is { } estimate ? Estimated(block, fact, estimate) : new FactRead(block, fact, block.Find(fact), ReadOrigin.Missing, double.NaN, 0, []);
    }

    /// <summary>The quantity as its line says it; null where it gives none.</summary>
    private static FactRead? LookWritten(Block block, FactDeclaration fact)
    {
        var line = block.Find(fact);
        return line?.Value switch
        {
            MeasureValue { Measure: var measure } => new FactRead(block, fact, line, ReadOrigin.Written, measure.Value, measure.HalfWidth, []),
            AbsentValue => new FactRead(block, fact, line, ReadOrigin.Written, 0, 0, []),
            _ => null,
        };
    }

    private FactRead Estimated(Block block, FactDeclaration fact, Estimate estimate)
    {
        var inner = new Reader(study);
        var value = estimate.Value(inner, block);
        var reads = inner.reads.DrainToImmutable();
        return inner.missing is null && double.IsFinite(value)
            ? new FactRead(block, fact, null, estimate.IsDefault ? ReadOrigin.Default : ReadOrigin.Estimate, value, Math.Abs(value) * (estimate.Spread ?? 0), reads)
            : new FactRead(block, fact, null, ReadOrigin.Missing, double.NaN, 0, reads);
    }

    private FactRead LookLine(Block block, FactDeclaration fact)
    {
        var line = block.Find(fact);
        return AsItHolds(line) is { IsComplete: true } now
            ? Read(block, fact, line!, now, (now.Value as MeasureValue)?.Measure.Value ?? double.NaN)
            : new FactRead(block, fact, null, ReadOrigin.Missing, double.NaN, 0, []);
    }

    /// <summary>The line with the values that hold in this study. Noted is always the line of the file.</summary>
    private Fact? AsItHolds(Fact? line) => line is not null && study.Variation is { } variation ? variation.Replaced(line) : line;

    private static FactRead Read(Block block, FactDeclaration fact, Fact line, Fact now, double value) =>
        ReferenceEquals(line, now)
            ? new FactRead(block, fact, line, ReadOrigin.Written, value, 0, [])
            : new FactRead(block, fact, line, IsAnswered(line, now) ? ReadOrigin.Solved : ReadOrigin.Varied, value, 0, []) { Held = now };

    private static bool IsAnswered(Fact line, Fact now) => line.Values.Any(pair => pair.Value is QueryValue && now.Values[pair.Key] is not QueryValue);
}
