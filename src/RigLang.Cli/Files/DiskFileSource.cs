using RigLang.Model.Files;

namespace RigLang.Cli.Files;

/// <summary>Files of the disk. Keeps nothing: whoever reads twice gets the file as it is then.</summary>
public sealed class DiskFileSource : IFileSource
{
    public FileText Read(FileId file)
    {
        // An editor's unnamed document, or a path with a zero in it, is nothing that the disk could have.
        if (!Path.IsPathFullyQualified(file.Path) || file.Path.Contains('\0', StringComparison.Ordinal))
        {
            return FileText.None("no such file");
        }

        var read = DiskText.Read(file.Path);
        return read.Text is { } text ? FileText.Of(text) : FileText.None(read.Problem!);
    }

    /// <summary>
    /// Folders that may not be listed count as empty. A link to a folder isn't followed: what it leads to is checked where it lies, and no circle of links
    /// can hold the search.
    /// </summary>
    public IReadOnlyList<FileId> RigFilesUnder(string folder)
    {
        var found = new List<FileId>();
        var open = new Stack<string>();
        open.Push(folder);
        while (open.TryPop(out var next))
        {
            foreach (var entry in List(next))
            {
                var path = entry.FullName.Replace('\\', '/');
                if (entry is DirectoryInfo)
                {
                    if (!IsHidden(entry) && entry.LinkTarget is null)
                    {
                        open.Push(path);
                    }
                }
                else if (entry.Name.EndsWith(".rig", StringComparison.Ordinal))
                {
                    found.Add(new FileId(path));
                }
            }
        }

        found.Sort(static (one, other) => string.CompareOrdinal(one.Path, other.Path));
        return found;
    }

    private static FileSystemInfo[] List(string folder)
    {
        try
        {
            return new DirectoryInfo(folder).GetFileSystemInfos();
        }
        catch (Exception denied) when (denied is IOException or UnauthorizedAccessException or System.Security.SecurityException or ArgumentException or NotSupportedException)
        {
            return [];
        }
    }

    private static bool IsHidden(FileSystemInfo folder) =>
        folder.Name.StartsWith('.') || (OperatingSystem.IsWindows() && folder.Attributes.HasFlag(FileAttributes.Hidden));
}
