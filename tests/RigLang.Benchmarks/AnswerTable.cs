using System.Diagnostics;
using System.Runtime.InteropServices;
using RigLang.Editing;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Benchmarks;

/// <summary>What an editor asks after a keystroke and while the caret moves, in this process: each answer on a state that nobody has asked anything yet.</summary>
internal static class AnswerTable
{
    private const int WarmUp = 15;
    private const int Counted = 60;
    private static readonly int[] Sizes = [1_000, 10_000];
    private static readonly FileId File = new("/rigs/generated.rig");

    public static void Print(TextWriter output)
    {
        output.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores, {RuntimeInformation.OSDescription}");
        output.WriteLine($"| answer, p50 in ms | {string.Join(" | ", Sizes.Select(size => $"{size:N0} lines"))} |");
        output.WriteLine($"| --- |{string.Concat(Sizes.Select(_ => " --- |"))}");
        var columns = Sizes.Select(Measure).ToList();
        foreach (var name in columns[0].Keys)
        {
            output.WriteLine($"| {name} | {string.Join(" | ", columns.Select(column => column[name].ToString("F2", null)))} |");
        }
    }

    private static Dictionary<string, double> Measure(int size)
    {
        var text = GeneratedRigs.Text(size);
        var lines = text.Split('\n');
        var middle = Array.FindIndex(lines, lines.Length / 2, line => line.StartsWith("rig ", StringComparison.Ordinal));
        var name = new LinePosition(middle, 5);
        var end = new LinePosition(0, lines[0].Length);
        var screen = new LineRange(new LinePosition(Math.Max(0, middle - 30), 0), new LinePosition(middle + 30, 0));
        var workspace = new EditorWorkspace(new MemoryFileSource());
        workspace.SetFolders(["/rigs"]);
        workspace.Open(File, text);
        workspace.Current.Findings(File, default);

        var times = new Dictionary<string, double>();
        Take("hover over a rig", service => service.Hover(File, name, default));
        Take("completion", service => service.Complete(File, new LinePosition(middle + 1, 4), default));
        Take("signature", service => service.Signature(File, new LinePosition(middle + 1, lines[middle + 1].Length), default));
        Take("the same name highlighted", service => service.Highlights(File, name, default));
        Take("changes offered on a rig's name", service => service.Changes(File, new LineRange(name, name), default));
        Take("hints of a screen", service => service.InlayNotes(File, screen, default));
        Take("colours of a screen", service => service.MeaningTokens(File, screen, default));
        Take("colours of the file", service => service.MeaningTokens(File, null, default));
        Take("lenses of the file", service => service.Lenses(File, default));
        Take("links of the file", service => service.Links(File, default));
        Take("outline of the file", service => service.Outline(File, default));
        Take("references of a rig", service => service.References(File, name, withDeclaration: true, default));
        Take("rename of a rig", service => service.Rename(File, name, "another", default));
        return times;

        void Take(string what, Func<ILanguageService, object?> ask)
        {
            var taken = new List<double>();
            for (var round = 0; round < WarmUp + Counted; round++)
            {
                // A keystroke at the end of the first line, with the findings that follow it, as the server has them.
                workspace.Change(File, [(round % 2 == 0 ? new LineRange(end, end) : new LineRange(end, end with { Character = end.Character + 2 }), round % 2 == 0 ? " #" : "")]);
                workspace.Current.Findings(File, default);
                var clock = Stopwatch.StartNew();
                ask(workspace.Current);
                if (round >= WarmUp)
                {
                    taken.Add(clock.Elapsed.TotalMilliseconds);
                }
            }

            taken.Sort();
            times[what] = taken[Counted / 2];
        }
    }
}
