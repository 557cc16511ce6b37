using System.Collections.Immutable;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Cli.Files;

/// <summary>The files that paths on the command line stand for, each once, in the order given.</summary>
/// <param name="Roots">The folders whose files may use each other.</param>
/// <param name="Problems">Paths that stand for nothing, and why.</param>
public sealed record RigInputs(ImmutableArray<FileId> Files, ImmutableArray<string> Roots, ImmutableArray<InputProblem> Problems)
{
    /// <summary>A workspace over the roots.</summary>
    public Workspace OpenWorkspace(IFileSource source) => new(source, [.. Roots]);

    /// <param name="paths">Files and folders; none stands for the current folder.</param>
    /// <param name="source">Lists folders.</param>
    /// <param name="folder">The current folder.</param>
    public static RigInputs Find(IReadOnlyCollection<string> paths, IFileSource source, string folder)
    {
        var current = DiskPaths.Absolute(folder, folder);
        var files = new List<FileId>();
        var roots = new List<string>();
        var problems = ImmutableArray.CreateBuilder<InputProblem>();
        foreach (var path in paths.Count == 0 ? ["."] : paths)
        {
            if (path.Length == 0 || path.Contains('\0', StringComparison.Ordinal))
            {
                problems.Add(new InputProblem(path, "that is no path of a file or folder"));
                continue;
            }

            var absolute = DiskPaths.Absolute(path, folder);
            if (Directory.Exists(absolute))
            {
                var found = source.RigFilesUnder(absolute);
                if (found.Count == 0)
                {
                    problems.Add(new InputProblem(path, "no .rig file in this folder or below it"));
                }

                files.AddRange(found);
                roots.Add(WorkspaceRoot.Of(absolute, current));
            }
            else if (!File.Exists(absolute))
            {
                problems.Add(new InputProblem(path, "no such file or folder"));
            }
            else if (!absolute.EndsWith(".rig", StringComparison.Ordinal))
            {
                problems.Add(new InputProblem(path, "not a .rig file"));
            }
            else
            {
                var file = new FileId(absolute);
                files.Add(file);
                roots.Add(WorkspaceRoot.Of(file.Folder.Length == 0 ? "/" : file.Folder, current));
            }
        }

        return new RigInputs([.. files.Distinct()], [.. roots.Distinct()], problems.ToImmutable());
    }
}

/// <summary>A path as it was given, and half a sentence on what is the matter with it.</summary>
public sealed record InputProblem(string Path, string Words);
