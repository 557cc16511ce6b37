using RigLang.Analysis;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Benchmarks;

/// <summary>A file open in an editor, in which single characters in the middle are typed and taken away: in turn another value, an error, the value again.</summary>
public sealed class TypingSession
{
    private static readonly FileId File = new("/rigs/generated.rig");

    private readonly int line;
    private readonly int column;
    private WorkspaceAnalysis analysis;

    public TypingSession(string text)
    {
        line = GeneratedRigs.MiddleWheelbase(text);
        column = text.Split('\n')[line].IndexOf('.', StringComparison.Ordinal);
        var workspace = new Workspace(new MemoryFileSource(), "/rigs").WithOpen(RigFile.Parse(File, text));
        analysis = new WorkspaceAnalysis(workspace);
        Findings = analysis.Findings(File).Remaining.Length;
    }

    /// <summary>How many there are now.</summary>
    public int Findings { get; private set; }

    /// <summary>One keystroke: a second point makes the number unreadable, the next keystroke takes it away.</summary>
    public void Type(int number)
    {
        var file = analysis.Workspace.OpenFile(File)!;
        var syntax = number % 2 == 0 ? file.Syntax.WithChange(new(line, column), new(line, column), ".") : file.Syntax.WithChange(new(line, column), new(line, column + 1), "");
        analysis = analysis.With(analysis.Workspace.WithOpen(file.With(syntax)));
        Findings = analysis.Findings(File).Remaining.Length;
    }
}
