using System.Diagnostics;
using System.Runtime.InteropServices;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;

namespace RigLang.Benchmarks;

/// <summary>All results of each example's rig: time and memory, and the results that cost most.</summary>
internal static class ResultTable
{
    private const int WarmUp = 3000;
    private const int Counted = 3000;

    public static void Print(TextWriter output)
    {
        output.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores, {RuntimeInformation.OSDescription}");
        output.WriteLine("| rig | results | with a value | computations | anew p50, µs | p95, µs | KB | one fact changed p50, µs | p95, µs | KB |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        var analysis = Examples.Open();
        foreach (var name in Examples.Rigs.Keys)
        {
            var parts = Examples.Rig(analysis, name);
            var study = new RigStudy(parts);
            var computed = AllResults.Compute(study);
            var anew = Measure(_ => AllResults.Compute(new RigStudy(parts)));
            var varied = Measure(number => AllResults.Compute(AllResults.Varied(study, number)));
            output.WriteLine($"| {name} | {AllResults.Count(study)} | {computed} | {study.CarriedOut} | {anew.P50:F0} | {anew.P95:F0} | {anew.Kilobytes:F0} | {varied.P50:F0} | {varied.P95:F0} | {varied.Kilobytes:F0} |");
        }

        output.WriteLine();
        output.WriteLine("What each costs that the ones before it haven't computed already, µs of the mean (5 and more):");
        foreach (var name in Examples.Rigs.Keys)
        {
            output.WriteLine($"{name}: {string.Join(", ", Costs(Examples.Rig(analysis, name)).Where(cost => cost.Microseconds >= 5).Select(cost => $"{cost.Result} {cost.Microseconds:F0}"))}");
        }
    }

    private static (double P50, double P95, double Kilobytes) Measure(Func<int, int> run)
    {
        var times = new double[Counted];
        for (var number = 0; number < WarmUp; number++)
        {
            run(number);
        }

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var number = 0; number < Counted; number++)
        {
            var start = Stopwatch.GetTimestamp();
            run(number);
            times[number] = Stopwatch.GetElapsedTime(start).TotalMicroseconds;
        }

        var kilobytes = (GC.GetAllocatedBytesForCurrentThread() - before) / 1024.0 / Counted;
        Array.Sort(times);
        return (times[Counted / 2], times[Counted * 95 / 100], kilobytes);
    }

    private static IEnumerable<(string Result, double Microseconds)> Costs(RigParts parts)
    {
        var results = Catalogue.Of(ResultScope.Rig).ToArray();
        var sums = new double[results.Length];
        for (var number = 0; number < Counted; number++)
        {
            var study = new RigStudy(parts);
            for (var index = 0; index < results.Length; index++)
            {
                var start = Stopwatch.GetTimestamp();
                results[index].Compute(study);
                sums[index] += Stopwatch.GetElapsedTime(start).TotalMicroseconds;
            }
        }

        return results.Select((result, index) => (result.Name, sums[index] / Counted)).OrderByDescending(cost => cost.Item2);
    }
}
