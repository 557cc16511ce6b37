using RigLang.Model.Files;

namespace RigLang.Cli.Revisions;

/// <summary>The files of a commit, each where it lies in the work tree.</summary>
internal sealed class RevisionFiles : IFileSource
{
    private readonly Repository repository;
    private readonly BlobReader blobs;
    private readonly Lazy<Dictionary<FileId, Entry>> entries;

    public RevisionFiles(Repository repository, string commit, BlobReader blobs)
    {
        this.repository = repository;
        this.blobs = blobs;
        entries = new(() => List(repository, commit));
    }

    /// <summary>What names the content of a file; null where the commit has none. Two commits with one id have one content.</summary>
    public string? ContentId(FileId file) => entries.Value.TryGetValue(file, out var entry) ? entry.Id : null;

    public FileText Read(FileId file)
    {
        if (!entries.Value.TryGetValue(file, out var entry))
        {
            return FileText.None(IsInSubmodule(file) ? "it lies in a submodule, which has revisions of its own" : "no such file in that revision");
        }

        if (entry.Sort is not Sort.File)
        {
            return FileText.None(entry.Sort == Sort.Link ? "it is a link, which isn't followed into a revision" : "it is a submodule");
        }

        var text = blobs.Read(entry.Id);
        return text.Text is { } found ? FileText.Of(found) : FileText.None(text.Problem!);
    }

    public IReadOnlyList<FileId> RigFilesUnder(string folder) =>
    [
        .. entries.Value.Where(pair => pair.Value.Sort == Sort.File && pair.Key.Path.EndsWith(".rig", StringComparison.Ordinal) && IsUnder(pair.Key, folder)).Select(pair => pair.Key)
            .OrderBy(file => file.Path, StringComparer.Ordinal),
    ];

    private static bool IsUnder(FileId file, string folder) =>
        FilePaths.IsUnder(file, [folder]) && !FilePaths.Relative(file, folder).Split('/').Any(part => part.StartsWith('.'));

    private bool IsInSubmodule(FileId file)
    {
        for (var folder = file.Folder; folder.Length > repository.Root.Length; folder = new FileId(folder).Folder)
        {
            if (entries.Value.TryGetValue(new FileId(folder), out var entry) && entry.Sort == Sort.Submodule)
            {
                return true;
            }
        }

        return false;
    }

    private static Dictionary<FileId, Entry> List(Repository repository, string commit)
    {
        var found = new Dictionary<FileId, Entry>();
        var text = GitProgram.Ask(repository.Root, "ls-tree", "-r", "-z", "--full-tree", commit)?.Text ?? "";
        foreach (var line in text.Split('\0', StringSplitOptions.RemoveEmptyEntries))
        {
            // "100644 blob ID\tPATH"
            var tab = line.IndexOf('\t', StringComparison.Ordinal);
            if (tab > 0 && line[..tab].Split(' ') is [var mode, _, var id])
            {
                found[new FileId($"{repository.Root}/{line[(tab + 1)..]}")] = new Entry(id, mode switch { "120000" => Sort.Link, "160000" => Sort.Submodule, _ => Sort.File });
            }
        }

        return found;
    }

    private enum Sort
    {
        File,
        Link,
        Submodule,
    }

    private sealed record Entry(string Id, Sort Sort);
}
