using System.Diagnostics;
using System.Runtime.InteropServices;
using RigLang.Analysis.Results.Road;
using RigLang.Model.Tracks;

namespace RigLang.Benchmarks;

/// <summary>Trips: the first time in the process, then the median and the 95th of a hundred, what the processor worked, whoever else waited for it, and what is allocated.</summary>
internal static class TripTable
{
    private const int WarmUp = 30, Counted = 100;

    public static void Print(TextWriter output)
    {
        output.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores, {RuntimeInformation.OSDescription}");
        output.WriteLine("| what | goal, ms | first in the process, ms | p50, ms | p95, ms | least, ms | processor time, mean, ms | KB |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- |");
        var gpx = GeneratedTrips.Track();
        var track = GpxReader.Read(gpx).Track!;
        Row(output, "of it: reading the track", 50, _ => GpxReader.Read(gpx));
        Row(output, "of it: measuring and smoothing the track", 50, _ => TrackProfile.Of(track with { }));
        var far = new TripSession(GeneratedTrips.WithTrack(85), gpx);
        Row(output, $"trip of {GeneratedTrips.TrackKilometres} km, track of {GeneratedTrips.TrackPoints:N0} points, all read anew", 50, _ => far.Open());
        Row(output, "the same, one leg's speed changed", 5, number => far.ChangeSpeed(70 + (number % 20)));
        var day = new TripSession(GeneratedTrips.EightLegs(), "");
        if (double.IsNaN(day.Solve()))
        {
            throw new InvalidOperationException("The day of eight legs should have a plan.");
        }

        Row(output, "day plan of eight legs, seven stops with two posts each", 100, _ => day.Solve());
    }

    private static void Row(TextWriter output, string what, int goal, Action<int> run)
    {
        double Time(int number)
        {
            var start = Stopwatch.GetTimestamp();
            run(number);
            return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        var first = Time(0);
        for (var number = 1; number < WarmUp; number++)
        {
            run(number);
        }

        using var process = Process.GetCurrentProcess();
        var used = process.TotalProcessorTime;
        var before = GC.GetAllocatedBytesForCurrentThread();
        double[] times = [.. Enumerable.Range(0, Counted).Select(Time).Order()];
        var kilobytes = (GC.GetAllocatedBytesForCurrentThread() - before) / 1024.0 / Counted;
        process.Refresh();
        var processor = (process.TotalProcessorTime - used).TotalMilliseconds / Counted;
        output.WriteLine($"| {what} | {goal} | {first:F1} | {times[Counted / 2]:F2} | {times[Counted * 95 / 100]:F2} | {times[0]:F2} | {processor:F1} | {kilobytes:F0} |");
    }
}
