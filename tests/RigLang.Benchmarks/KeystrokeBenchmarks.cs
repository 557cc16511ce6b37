using BenchmarkDotNet.Attributes;

namespace RigLang.Benchmarks;

/// <summary>Protects the figure of docs/performance.md: a keystroke in 1,000 lines to its findings under 20 ms.</summary>
[MemoryDiagnoser]
public class KeystrokeBenchmarks
{
    private TypingSession session = null!;
    private int number;

    [Params(100, 1_000, 10_000)]
    public int Lines { get; set; }

    [GlobalSetup]
    public void Open() => session = new TypingSession(GeneratedRigs.Text(Lines));

    [Benchmark]
    public int Keystroke()
    {
        session.Type(number++);
        return session.Findings;
    }
}
