using BenchmarkDotNet.Attributes;
using RigLang.Analysis.Studies;

namespace RigLang.Benchmarks;

/// <summary>Protects the figure of docs/performance.md: all results of a rig under 200 µs.</summary>
[MemoryDiagnoser]
public class ResultBenchmarks
{
    private RigParts parts = null!;
    private RigStudy study = null!;
    private int number;

    [Params("coast", "tour", "saturday")]
    public string Rig { get; set; } = "";

    [GlobalSetup]
    public void Open()
    {
        parts = Examples.Rig(Examples.Open(), Rig);
        study = new RigStudy(parts);
        AllResults.Compute(study);
    }

    [Benchmark]
    public int Anew() => AllResults.Compute(new RigStudy(parts));

    [Benchmark]
    public int WithOneFactChanged() => AllResults.Compute(AllResults.Varied(study, number++));
}
