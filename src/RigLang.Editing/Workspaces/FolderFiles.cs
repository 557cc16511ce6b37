using System.Collections.Immutable;
using RigLang.Model.Files;

namespace RigLang.Editing.Workspaces;

/// <summary>The rig files of the workspace's folders. The folders are listed when the files are first asked for. Immutable for its users.</summary>
internal sealed class FolderFiles
{
    private readonly IFileSource source;
    private readonly Lazy<ImmutableSortedSet<FileId>> files;

    public FolderFiles(IFileSource source, ImmutableArray<string> folders)
        : this(source, folders, new(() => folders.SelectMany(source.RigFilesUnder).ToImmutableSortedSet(ByPath)))
    {
    }

    private FolderFiles(IFileSource source, ImmutableArray<string> folders, Lazy<ImmutableSortedSet<FileId>> files)
    {
        this.source = source;
        Folders = folders;
        this.files = files;
    }

    public ImmutableArray<string> Folders { get; }

    public ImmutableSortedSet<FileId> All => files.Value;

    /// <summary>In the order of their paths, letter by letter.</summary>
    public static IComparer<FileId> ByPath { get; } = Comparer<FileId>.Create((one, other) => string.CompareOrdinal(one.Path, other.Path));

    /// <summary>Whether the file lies in one of the folders, and in no hidden folder of it.</summary>
    public bool Covers(FileId file) => Folders.Any(folder => FilePaths.IsUnder(file, [folder]) && !IsHidden(FilePaths.Relative(file, folder)));

    public static bool IsRig(FileId file) => file.Path.EndsWith(".rig", StringComparison.Ordinal);

    /// <summary>
    /// What changed, file by file, where whole folders may be named: a path that is neither a rig file nor a track is taken as a folder, and stands for all
    /// that is known below it. Then the folders must be listed anew, since what they hold now isn't known.
    /// </summary>
    public (List<FileId> Files, bool IsListedAnew) Expand(IEnumerable<FileId> changed, IEnumerable<FileId> known)
    {
        var all = changed.ToList();
        var below = all.Where(path => !IsRig(path) && !path.Path.EndsWith(".gpx", StringComparison.OrdinalIgnoreCase)).Select(path => path.Path).ToList();
        if (below.Count == 0)
        {
            return (all, false);
        }

        var listed = files.IsValueCreated ? files.Value : [];
        all.AddRange(listed.Concat(known).Where(file => FilePaths.IsUnder(file, below)));
        all.AddRange(below.Where(folder => Folders.Any(root => folder == root || FilePaths.IsUnder(new FileId(folder), [root]))).SelectMany(source.RigFilesUnder));
        return ([.. all.Distinct()], true);
    }

    /// <summary>The same after these files came, went or changed on the disk.</summary>
    public FolderFiles WithChanged(IEnumerable<FileId> changed)
    {
        if (!files.IsValueCreated)
        {
            return new FolderFiles(source, Folders);
        }

        var all = files.Value;
        foreach (var file in changed.Where(file => IsRig(file) && Covers(file)))
        {
            all = source.Read(file).Text is null ? all.Remove(file) : all.Add(file);
        }

        return new FolderFiles(source, Folders, new(all));
    }

    private static bool IsHidden(string relative) => relative.Split('/').Any(part => part.StartsWith('.'));
}
