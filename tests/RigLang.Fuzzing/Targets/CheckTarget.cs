using RigLang.Analysis;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Fuzzing.Targets;

/// <summary>Binding and all checks, questions answered: no exception, every finding at a place of the text, and no message tells of what is no number.</summary>
internal sealed class CheckTarget : IFuzzTarget
{
    private static readonly FileId File = new("/rigs/a.rig");

    public string Name => "check";

    public void Run(ReadOnlySpan<byte> input)
    {
        var text = Promise.Text(input);
        var written = new WorkspaceAnalysis(new Workspace(new MemoryFileSource([(File.Path, text)]), "/rigs"));
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        written.Answer(File, patience.Token);
        var findings = written.Solved.Findings(File, patience.Token);
        foreach (var finding in findings.Remaining)
        {
            Promise.Holds(finding.Place.Span.End <= finding.Place.Declaration.Lines[finding.Place.Line].Text.Length, "a finding lies in its line");
            Promise.Holds(!finding.Message.Contains("NaN", StringComparison.Ordinal) || text.Contains("NaN", StringComparison.OrdinalIgnoreCase), "no message tells of what is no number");
        }
    }
}
