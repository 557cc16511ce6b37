using RigLang.Model.Binding;
using RigLang.Model.Files;

namespace RigLang.Analysis.Tests.Curing;

/// <summary>Fixes applied to text by themselves, so that no code of the fixes is trusted.</summary>
internal static class Applied
{
    /// <summary>The text of the file with the fix's edits in it.</summary>
    public static string To(WorkspaceAnalysis analysis, FileId file, string text, Fix fix)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        foreach (var edit in fix.Edits.OrderByDescending(edit => analysis.Workspace.LineOf(edit.Place)).ThenByDescending(edit => edit.Place.Span.Start))
        {
            edit.Place.File.Should().Be(file);
            var line = analysis.Workspace.LineOf(edit.Place)!.Value;
            lines[line] = lines[line][..edit.Place.Span.Start] + edit.NewText + lines[line][edit.Place.Span.End..];
        }

        return string.Join('\n', lines.Where((line, index) => !string.IsNullOrWhiteSpace(line) || fix.Edits.All(edit => edit.NewText.Length > 0 || analysis.Workspace.LineOf(edit.Place) != index)));
    }
}
