using RigLang.Model.Files;

namespace RigLang.Editing.Completing;

/// <summary>Paths of the workspace's files, as a <c>use</c> line writes them.</summary>
internal static class PathCompleter
{
    public static IReadOnlyList<CompletionEntry> Of(LineCaret caret, int textStart)
    {
        var spot = caret.Spot;
        var line = spot.Syntax.Text;
        var end = line.IndexOf('"', textStart);
        var range = spot.RangeOf(Syntax.TextSpan.FromBounds(textStart, end < 0 ? Math.Max(spot.Position.Character, line.TrimEnd().Length) : end));
        var used = spot.File.Uses.Where(use => use.Syntax != spot.Own.Syntax && use.Use.Path is not null).Select(use => FilePaths.Resolve(spot.File.Id, use.Use.Path!.Value)).ToHashSet();
        return
        [
            .. spot.State.AllFiles.Where(file => file != spot.File.Id && !used.Contains(file) && spot.State.Workspace.IsInside(file, spot.File.Id))
                .Select(file => (File: file, Path: PathFrom(spot.File.Id.Folder, file.Path))).OrderBy(pair => pair.Path.Count(c => c == '/')).ThenBy(pair => pair.Path, StringComparer.Ordinal)
                .Select((pair, index) => new CompletionEntry(pair.Path, CompletionSort.File, pair.File.Name, "", new TextReplacement(range, pair.Path), false, $"1{index:0000}")),
        ];
    }

    /// <summary>The way from a folder to a file: "vehicles/van.rig", "../loads.rig".</summary>
    public static string PathFrom(string folder, string path)
    {
        var (from, to) = (folder.Split('/'), path.Split('/'));
        var same = 0;
        while (same < from.Length && same < to.Length - 1 && from[same] == to[same])
        {
            same++;
        }

        return string.Concat(Enumerable.Repeat("../", from.Length - same)) + string.Join('/', to[same..]);
    }
}
