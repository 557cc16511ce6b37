using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing.Tests.Support;

/// <summary>Files in a folder, one of them open in an editor.</summary>
internal sealed class TestWorkspace
{
    public static readonly FileId Main = new("/rigs/main.rig");

    public TestWorkspace(string main, params (string Name, string Text)[] others)
    {
        Marked = MarkedText.Parse(main);
        Workspace = new EditorWorkspace(new MemoryFileSource([.. others.Select(other => ("/rigs/" + other.Name, other.Text))]));
        Workspace.SetFolders(["/rigs"]);
        Workspace.Open(Main, Marked.Text);
    }

    public MarkedText Marked { get; }

    public EditorWorkspace Workspace { get; }

    public ILanguageService Service => Workspace.Current;

    public string Hover() => Service.Hover(Main, Marked.At, default)?.Markdown ?? "";

    /// <summary>The text that a range of the main file holds.</summary>
    public string TextOf(LineRange range)
    {
        var lines = Marked.Text.Split('\n');
        return range.Start.Line == range.End.Line ? lines[range.Start.Line][range.Start.Character..range.End.Character] : string.Join("\n", lines[range.Start.Line..(range.End.Line + 1)]);
    }

    public string TextAfter(IEnumerable<(FilePlace Place, string NewText)> edits) => Apply(Marked.Text, edits.Select(edit => new TextReplacement(edit.Place.Range, edit.NewText)));

    public static string Apply(string text, IEnumerable<TextReplacement> edits)
    {
        foreach (var edit in edits.OrderByDescending(edit => edit.Range.Start))
        {
            text = text[..Offset(text, edit.Range.Start)] + edit.NewText + text[Offset(text, edit.Range.End)..];
        }

        return text;
    }

    /// <summary>Lines end in LF here; tests of other breaks count for themselves.</summary>
    private static int Offset(string text, LinePosition position)
    {
        var offset = 0;
        for (var line = 0; line < position.Line; line++)
        {
            offset = text.IndexOf('\n', offset) + 1;
        }

        return offset + position.Character;
    }
}
