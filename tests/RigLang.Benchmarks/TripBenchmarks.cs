using BenchmarkDotNet.Attributes;

namespace RigLang.Benchmarks;

/// <summary>
/// Protects the figures of docs/performance.md: a trip of 300 km with a track of 20,000 points under 50 ms cold and 5 ms when one leg's speed changes, the day plan
/// of eight legs and seven chargers under 100 ms.
/// </summary>
[MemoryDiagnoser]
public class TripBenchmarks
{
    private TripSession far = null!, day = null!;
    private int number;

    [GlobalSetup]
    public void Open()
    {
        far = new TripSession(GeneratedTrips.WithTrack(85), GeneratedTrips.Track());
        day = new TripSession(GeneratedTrips.EightLegs(), "");
        far.Open();
    }

    [Benchmark]
    public int TrackCold() => far.Open();

    [Benchmark]
    public int TrackSpeedChanged() => far.ChangeSpeed(70 + (number++ % 20));

    [Benchmark]
    public double DayPlan() => day.Solve();
}
