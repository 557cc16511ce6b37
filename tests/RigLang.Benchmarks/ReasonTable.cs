using System.Diagnostics;
using System.Runtime.InteropServices;
using RigLang.Analysis;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Doubts;
using RigLang.Analysis.Ranking;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax;

namespace RigLang.Benchmarks;

/// <summary>What the tracked reads give, over the examples: reasons in hovers, doubts, what matters most, fixes that compute. All anew each time, after code that ran before.</summary>
internal static class ReasonTable
{
    private const int WarmUp = 4;
    private const int Counted = 15;

    public static void Print(TextWriter output)
    {
        output.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores, {RuntimeInformation.OSDescription}");
        output.WriteLine("| what | goal, ms | number | p50, ms | p95, ms | most, ms |");
        output.WriteLine("| --- | --- | --- | --- | --- | --- |");
        Row(output, "hover over a line that tests or asks, or a name of a rig or trip", 5, Hovers());
        Row(output, "± over all results of a rig or trip", 100, Studies(study => Doubtful(study, DoubtTable.Of)));
        Row(output, "what would change one result (the dearest of each rig or trip)", 100, Dearest((result, subject) => WhatMatters.Of(result, subject, DisplaySystem.Metric)));
        Row(output, "fixes computed for a finding", 50, Fixes());
    }

    private static void Row(TextWriter output, string what, int goal, IReadOnlyCollection<double> medians)
    {
        var sorted = medians.Order().ToList();
        output.WriteLine(FormattableString.Invariant($"| {what} | {goal} | {sorted.Count} | {sorted[sorted.Count / 2]:F2} | {sorted[sorted.Count * 95 / 100]:F2} | {sorted[^1]:F2} |"));
    }

    /// <summary>Each after a keystroke in its file and the findings that follow it.</summary>
    private static List<double> Hovers()
    {
        var files = Examples.Files();
        var medians = new List<double>();
        foreach (var file in files.RigFilesUnder("/rigs"))
        {
            var text = files.Read(file).Text!;
            var lines = text.Split('\n');
            for (var number = 0; number < lines.Length; number++)
            {
                var words = lines[number].Split(' ', StringSplitOptions.RemoveEmptyEntries);
                if (words is not (["rig" or "trip", _, ..] or ["expect" or "limit", ..]) && !lines[number].Contains(" ? ", StringComparison.Ordinal))
                {
                    continue;
                }

                var caret = lines[number].Contains(" ? ", StringComparison.Ordinal) ? lines[number].IndexOf('?', StringComparison.Ordinal) : lines[number].IndexOf(words[1], StringComparison.Ordinal) + 1;
                medians.Add(MedianHover(files, file, lines[0].Length, new LinePosition(number, caret)));
            }
        }

        return medians;
    }

    private static double MedianHover(MemoryFileSource files, FileId file, int end, LinePosition caret)
    {
        var workspace = new EditorWorkspace(files);
        workspace.SetFolders(["/rigs"]);
        workspace.Open(file, files.Read(file).Text!);
        var round = 0;
        return Median(
            () =>
            {
                var (from, to) = (new LinePosition(0, end), new LinePosition(0, end + 2));
                workspace.Change(file, [round++ % 2 == 0 ? (new LineRange(from, from), " #") : (new LineRange(from, to), "")]);
                workspace.Current.Findings(file, default);
            },
            () => workspace.Current.Hover(file, caret, default));
    }

    private static List<double> Studies(Action<Study> run)
    {
        var medians = new List<double>();
        foreach (var index in Enumerable.Range(0, All(Examples.Open()).Count))
        {
            Study? study = null;
            medians.Add(Median(() => study = All(Examples.Open())[index], () => run(study!)));
        }

        return medians;
    }

    private static void Doubtful<T>(Study study, Func<IResult, ISubject, T> ask)
    {
        foreach (var subject in study.Subjects)
        {
            foreach (var result in Catalogue.Results)
            {
                if (result.Compute(subject) is { IsComputed: true })
                {
                    ask(result, subject);
                }
            }
        }
    }

    private static List<double> Dearest<T>(Func<IResult, ISubject, T> ask)
    {
        var medians = new List<double>();
        foreach (var index in Enumerable.Range(0, All(Examples.Open()).Count))
        {
            var study = All(Examples.Open())[index];
            var asked = study.Subjects.SelectMany(subject => Catalogue.Results.Select(result => (Result: result, Subject: subject))).Where(pair => pair.Result.Compute(pair.Subject) is { IsComputed: true }).ToList();
            medians.Add(asked.Max(pair => Median(() => { }, () => ask(pair.Result, pair.Subject))));
        }

        return medians;
    }

    private static List<double> Fixes()
    {
        var first = Examples.Open();
        var medians = new List<double>();
        foreach (var file in Examples.Files().RigFilesUnder("/rigs"))
        {
            for (var index = 0; index < first.Solved.Findings(file).Remaining.Length; index++)
            {
                if (!ComputedFixes.IsPossible(first.Solved.Findings(file).Remaining[index]))
                {
                    continue;
                }

                var state = first;
                medians.Add(Median(
                    () =>
                    {
                        state = Examples.Open().Solved;
                        state.Findings(file);
                    },
                    () => ComputedFixes.Of(state, state.Findings(file).Remaining[index])));
            }
        }

        return medians;
    }

    private static double Median(Action before, Action run)
    {
        var times = new List<double>();
        for (var round = 0; round < WarmUp + Counted; round++)
        {
            before();
            var clock = Stopwatch.StartNew();
            run();
            if (round >= WarmUp)
            {
                times.Add(clock.Elapsed.TotalMilliseconds);
            }
        }

        times.Sort();
        return times[Counted / 2];
    }

    private static List<Study> All(WorkspaceAnalysis analysis)
    {
        var solved = analysis.Solved;
        return
        [
            .. from file in Examples.Files().RigFilesUnder("/rigs")
               from declaration in analysis.Workspace.Link(file)?.Declarations ?? []
               let study = declaration.Kind == DeclarationKind.Rig ? solved.Rig(declaration) : declaration.Kind == DeclarationKind.Trip ? solved.Trip(declaration) : (Study?)null
               where study is not null
               select study,
        ];
    }
}
