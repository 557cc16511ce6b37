using System.Diagnostics;
using System.Runtime.InteropServices;

namespace RigLang.Benchmarks;

/// <summary>From a keystroke to the findings of the file typed in, in this process: the whole chain but for the pipe and JSON.</summary>
internal static class KeystrokeTable
{
    private const int WarmUp = 60;
    private const int Counted = 300;

    public static void Print(TextWriter output)
    {
        output.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores, {RuntimeInformation.OSDescription}");
        output.WriteLine("| lines | first findings, ms | keystroke p50, ms | p95, ms | p99, ms |");
        output.WriteLine("| --- | --- | --- | --- | --- |");
        foreach (var lines in new[] { 100, 1_000, 10_000, 50_000 })
        {
            var text = GeneratedRigs.Text(lines);
            var clock = Stopwatch.StartNew();
            var session = new TypingSession(text);
            var first = clock.Elapsed.TotalMilliseconds;
            var times = new List<double>();
            for (var number = 0; number < WarmUp + Counted; number++)
            {
                clock.Restart();
                session.Type(number);
                if (number >= WarmUp)
                {
                    times.Add(clock.Elapsed.TotalMilliseconds);
                }
            }

            times.Sort();
            output.WriteLine($"| {lines:N0} | {first:F0} | {times[Counted / 2]:F2} | {times[Counted * 95 / 100]:F2} | {times[Counted * 99 / 100]:F2} |");
        }
    }
}
