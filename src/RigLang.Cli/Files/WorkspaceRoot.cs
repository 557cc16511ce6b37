using RigLang.Model.Files;

namespace RigLang.Cli.Files;

/// <summary>Finds the folder whose files may use each other: the wall that <c>use</c> can't climb over.</summary>
public static class WorkspaceRoot
{
    /// <summary>
    /// The nearest folder at or above that is under version control; else the current folder when it holds this one; else this folder itself.
    /// </summary>
    /// <param name="folder">The folder of a file, or one that was named; absolute, forward slashes.</param>
    /// <param name="current">The current folder, likewise.</param>
    public static string Of(string folder, string current)
    {
        for (var at = folder; at.Length > 0; at = Above(at))
        {
            if (Path.Exists(at + "/.git"))
            {
                return at;
            }
        }

        return folder == current || FilePaths.IsUnder(new FileId(folder), [current]) ? current : folder;
    }

    private static string Above(string folder) => folder.LastIndexOf('/') is var slash and > 0 ? folder[..slash] : "";
}
