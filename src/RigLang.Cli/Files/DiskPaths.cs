using RigLang.Model.Files;

namespace RigLang.Cli.Files;

/// <summary>Between the paths of the system and those of the language, which have forward slashes everywhere.</summary>
public static class DiskPaths
{
    /// <summary>The file that a path names when looked at from a folder.</summary>
    public static FileId FileOf(string path, string folder) => new(Absolute(path, folder));

    /// <summary>An absolute path with forward slashes, without <c>.</c>, <c>..</c> and a slash at the end.</summary>
    public static string Absolute(string path, string folder)
    {
        var full = Path.GetFullPath(path, folder).Replace('\\', '/');
        return full.Length > 1 && full.EndsWith('/') && !full.EndsWith(":/", StringComparison.Ordinal) ? full[..^1] : full;
    }

    /// <summary>How a person in the folder would write the path.</summary>
    public static string Shown(FileId file, string folder)
    {
        if (!Path.IsPathFullyQualified(file.Path))
        {
            return file.Path;
        }

        var relative = Path.GetRelativePath(folder, file.Path).Replace('\\', '/');
        return relative.Length <= file.Path.Length ? relative : file.Path;
    }
}
