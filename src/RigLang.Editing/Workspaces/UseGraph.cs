using System.Collections.Immutable;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Editing.Workspaces;

/// <summary>Which files use which, to tell whose findings an edit may change. Not safe for several threads; belongs to the writer.</summary>
internal sealed class UseGraph
{
    private readonly Dictionary<FileId, (RigFile? File, ImmutableArray<FileId> Uses)> known = [];

    /// <summary>Those of the candidates that use one of the files, straight or by way of others. The names in a used file count as seen there, so every step matters.</summary>
    public IEnumerable<FileId> Dependants(Workspace workspace, IReadOnlyCollection<FileId> files, IEnumerable<FileId> candidates)
    {
        foreach (var candidate in candidates)
        {
            if (!files.Contains(candidate) && Reaches(workspace, candidate, files))
            {
                yield return candidate;
            }
        }
    }

    private bool Reaches(Workspace workspace, FileId from, IReadOnlyCollection<FileId> files)
    {
        var seen = new HashSet<FileId> { from };
        var open = new Stack<FileId>([from]);
        while (open.TryPop(out var next))
        {
            foreach (var used in UsesOf(workspace, next))
            {
                if (files.Contains(used))
                {
                    return true;
                }

                if (seen.Add(used))
                {
                    open.Push(used);
                }
            }
        }

        return false;
    }

    private ImmutableArray<FileId> UsesOf(Workspace workspace, FileId id)
    {
        var file = workspace.Find(id);
        if (known.TryGetValue(id, out var before) && ReferenceEquals(before.File, file))
        {
            return before.Uses;
        }

        ImmutableArray<FileId> uses = file is null ? [] : [.. file.Uses.Select(use => use.Use.Path is { } path ? FilePaths.Resolve(id, path.Value) : null).OfType<FileId>().Distinct()];
        known[id] = (file, uses);
        return uses;
    }
}
