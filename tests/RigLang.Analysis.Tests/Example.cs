namespace RigLang.Analysis.Tests;

/// <summary>The examples of the repository, each scenario put together to one file.</summary>
internal static class Example
{
    /// <summary>All scenarios, as one text each.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Directory.GetDirectories(Folder()).Order(StringComparer.Ordinal).Select(Whole)];

    private static string Whole(string scenario) => string.Join(
        '\n',
        Directory.GetFiles(scenario, "*.rig", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .SelectMany(File.ReadLines).Where(line => !line.StartsWith("use ", StringComparison.Ordinal)));

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RigLang.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("The tests run inside the repository.");
        }

        return Path.Combine(folder.FullName, "examples");
    }
}
