namespace RigLang.Model.Files;

/// <summary>Paths as the language writes them: forward slashes, counted from the folder of the file that names them.</summary>
public static class FilePaths
{
    /// <summary>
    /// The file that a path in <paramref name="from"/> names; null when it climbs above the file system's top. Back slashes count as forward ones, so
    /// that a file written on one system reads on another.
    /// </summary>
    public static FileId? Resolve(FileId from, string path)
    {
        var text = path.Replace('\\', '/');
        var isAbsolute = text.StartsWith('/') || (text.Length > 1 && text[1] == ':');
        var parts = isAbsolute ? [] : from.Folder.Split('/').ToList();
        foreach (var part in text.Split('/'))
        {
            switch (part)
            {
                case "" or ".":
                    continue;
                case ".." when parts.Count == 0 || parts[^1].Length == 0:
                    return null;
                case "..":
                    parts.RemoveAt(parts.Count - 1);
                    break;
                default:
                    parts.Add(part);
                    break;
            }
        }

        var joined = string.Join('/', parts);
        return new FileId(isAbsolute && text.StartsWith('/') ? "/" + joined : joined);
    }

    /// <summary>How <paramref name="from"/> writes the path of another file: up to the folder that both are under, then down. <see cref="Resolve"/> reads it back.</summary>
    public static string PathFrom(FileId from, FileId to)
    {
        string[] here = from.Folder.Split('/'), there = to.Folder.Split('/');
        var same = 0;
        while (same < here.Length && same < there.Length && here[same] == there[same])
        {
            same++;
        }

        return string.Join('/', Enumerable.Repeat("..", here.Length - same).Concat(there[same..]).Append(to.Name));
    }

    /// <summary>Whether the file lies in one of the folders or below it.</summary>
    public static bool IsUnder(FileId file, IEnumerable<string> folders) =>
        folders.Any(folder => file.Path.StartsWith(folder.EndsWith('/') ? folder : folder + "/", StringComparison.Ordinal));

    /// <summary>The path of a file as seen from a folder, for messages; the whole path when it lies elsewhere.</summary>
    public static string Relative(FileId file, string folder)
    {
        var start = folder.EndsWith('/') ? folder : folder + "/";
        return file.Path.StartsWith(start, StringComparison.Ordinal) ? file.Path[start.Length..] : file.Path;
    }
}
