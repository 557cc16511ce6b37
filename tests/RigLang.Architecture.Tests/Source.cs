using System.Runtime.CompilerServices;

namespace RigLang.Architecture.Tests;

/// <summary>The repository as its files.</summary>
internal static class Source
{
    public static string Root { get; } = FindRoot();

    /// <summary>Files below a folder of the repository, what is made by building left out; paths from the root, forward slashes.</summary>
    public static IEnumerable<string> Files(string folder, params string[] endings) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Where(file => endings.Any(ending => file.EndsWith(ending, StringComparison.Ordinal)) && !file.Split('/').Any(part => part is "bin" or "obj" or "node_modules" or "out" or ".git"))
            .Order(StringComparer.Ordinal);

    public static string Read(string file) => File.ReadAllText(Path.Combine(Root, file));

    private static string FindRoot([CallerFilePath] string here = "")
    {
        // Built elsewhere, the path of this file may be a made-up one; then the folder of the tests leads up to the root.
        for (var folder = File.Exists(here) ? Path.GetDirectoryName(here) : AppContext.BaseDirectory; folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (File.Exists(Path.Combine(folder, "RigLang.sln")))
            {
                return folder;
            }
        }

        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
