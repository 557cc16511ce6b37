using System.Runtime.CompilerServices;
using RigLang.Model.Files;

namespace RigLang.Editing.Tests.Support;

/// <summary>The repository's examples.</summary>
internal static class Examples
{
    public const string Folder = "/examples";

    private static readonly string Root = Path.GetFullPath(Path.Combine(Here(), "..", "..", "..", "examples"));

    public static string Read(string path) => File.ReadAllText(Path.Combine(Root, path));

    /// <summary>All of them, as they would lie in a folder <c>/examples</c>.</summary>
    public static MemoryFileSource Source() => new([.. Directory.GetFiles(Root, "*.*", SearchOption.AllDirectories)
        .Select(file => ($"{Folder}/{Path.GetRelativePath(Root, file).Replace('\\', '/')}", File.ReadAllText(file)))]);

    public static EditorWorkspace Open(params string[] paths)
    {
        var workspace = new EditorWorkspace(Source());
        workspace.SetFolders([Folder]);
        foreach (var path in paths)
        {
            workspace.Open(new FileId($"{Folder}/{path}"), Read(path));
        }

        return workspace;
    }

    private static string Here([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;
}
