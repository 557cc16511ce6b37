using System.Diagnostics;
using System.Globalization;
using RigLang.Analysis;
using RigLang.Analysis.Solving;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Benchmarks;

/// <summary>What answering a question costs, the study new each time: nothing of it is computed yet.</summary>
internal static class QuestionTable
{
    private const int WarmUp = 20;
    private const int Counted = 101;
    private static readonly FileId File = new("/rigs/a.rig");

    public static void Print(TextWriter output)
    {
        output.WriteLine("| question | legs | looks | computations a look | p50, ms | p95, ms |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- |");
        foreach (var legs in new[] { 5, 20, 100 })
        {
            Measure(output, "speed of the first leg for the time of the whole trip", legs, Text(legs, "95 %", "? for total-time = 2 h 30 min"));
            Measure(output, "charge at the start for what is left at the end", legs, Text(legs, "? for energy-left = 30 %", "85 km/h"));
            Measure(output, "speed of the first leg for the least energy of all", legs, Text(legs, "95 %", "? least total-energy within 20 km/h .. 130 km/h"));
            Measure(output, "two that rest on each other", legs, Text(legs, "? for energy-left = 30 %", "? for range-left = 300 km"));
        }
    }

    private static void Measure(TextWriter output, string question, int legs, string text)
    {
        var times = new List<double>();
        var isFound = true;
        var (looks, carried) = (0, 0);
        for (var number = 0; number < WarmUp + Counted; number++)
        {
            var analysis = new WorkspaceAnalysis(new Workspace(new MemoryFileSource([(File.Path, text)]), "/rigs"));
            var study = analysis.Trip(analysis.Workspace.Find(File, DeclarationKind.Trip, "out")!)!;
            var clock = Stopwatch.StartNew();
            var solved = Solver.Solve(study);
            if (number >= WarmUp)
            {
                times.Add(clock.Elapsed.TotalMilliseconds);
            }

            isFound &= solved.Answers.All(answer => answer.IsFound);
            looks = solved.Answers.Max(answer => answer.Looks);
            // The solved study is itself one look; asked for what the questions wish, it carries out what each of them did.
            foreach (var answer in solved.Answers)
            {
                answer.Unknown.Result.Compute(solved.Here(answer.Subject!)!);
            }

            carried = solved.CarriedOut;
        }

        times.Sort();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {question}{(isFound ? "" : " (out of reach)")} | {legs} | {looks} | {carried} | {times[Counted / 2]:F2} | {times[Counted * 95 / 100]:F2} |"));
    }

    private static string Text(int legs, string charge, string speed) => $$"""
        vehicle van
            mass 2400 kg
            rolling 0.010
            drag-area 0.8 m²
            aboard nothing
            electric
                usable-energy 80 kWh
                motor-power 150 kW
                auxiliary 1 kW
                charge-point 10 % 120 kW
                charge-point 100 % 10 kW

        rig solo
            vehicle van
            speed 85 km/h

        trip out
            rig solo
            start home
            start-charge {{charge}}
        {{string.Join('\n', Enumerable.Range(0, legs).Select(leg => Leg(leg, legs, leg == 0 ? speed : "80 km/h")))}}

        """;

    private static string Leg(int leg, int legs, string speed) => string.Create(CultureInfo.InvariantCulture, $"""
            leg place{leg}
                distance {(200.0 / legs):F1} km
                climb {1000.0 / legs:F0} m
                descent {1000.0 / legs:F0} m
                speed {speed}
        """);
}
