using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Editing.Workspaces;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Editing.Navigating;

/// <summary>
/// What must be written anew in paths when files or folders get another place: in the files that name them, and in those that move and name others.
/// The edits are about the files where they stand now.
/// </summary>
internal static class PathMover
{
    public static ImmutableArray<(FilePlace Place, string NewText)> Edits(EditorState state, ImmutableArray<(FileId Old, FileId New)> moves, CancellationToken cancel)
    {
        var edits = ImmutableArray.CreateBuilder<(FilePlace Place, string NewText)>();
        foreach (var id in state.AllFiles)
        {
            cancel.ThrowIfCancellationRequested();
            if (state.Workspace.Link(id) is not { } linked)
            {
                continue;
            }

            var home = After(id, moves);
            foreach (var link in PathLinks.Of(state, linked))
            {
                var target = After(link.Target, moves);
                if ((home != id || target != link.Target) && Written(linked, link, home, target) is { } path)
                {
                    edits.Add((new FilePlace(id, link.Range), path));
                }
            }
        }

        return edits.DrainToImmutable();
    }

    /// <summary>Where a file will be: itself, or what lies in a folder that moves.</summary>
    private static FileId After(FileId file, ImmutableArray<(FileId Old, FileId New)> moves)
    {
        foreach (var (old, now) in moves)
        {
            if (file == old)
            {
                return now;
            }

            if (file.Path.StartsWith(old.Path.TrimEnd('/') + "/", StringComparison.Ordinal))
            {
                return new FileId(now.Path.TrimEnd('/') + file.Path[old.Path.TrimEnd('/').Length..]);
            }
        }

        return file;
    }

    /// <summary>The path to write; null when what is written is still right.</summary>
    private static string? Written(LinkedFile linked, FileLink link, FileId home, FileId target)
    {
        var old = linked.File.Syntax.Lines[link.Range.Start.Line].Text[link.Range.Start.Character..link.Range.End.Character];
        if (FilePaths.Resolve(home, old) == target)
        {
            return null;
        }

        return old.StartsWith('/') || old.Contains(':', StringComparison.Ordinal) ? target.Path : FilePaths.PathFrom(home, target);
    }
}
