using System.Runtime.CompilerServices;

namespace RigLang.Cli.Tests;

/// <summary>
/// Output as a terminal shows it, kept beside the tests for people to read. <c>RIGLANG_REWRITE_GOLDEN=1 dotnet test tests/RigLang.Cli.Tests</c> writes the files
/// again; read the difference before it is committed. Where tests run by themselves (CI is set) the switch has no effect.
/// </summary>
internal static class Golden
{
    public static string Folder { get; } = FolderOf();

    public static void Holds(string name, string actual)
    {
        var path = Path.Combine(Folder, name + ".txt");
        if (Environment.GetEnvironmentVariable("RIGLANG_REWRITE_GOLDEN") == "1" && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("CI")))
        {
            File.WriteAllText(path, actual);
        }

        File.Exists(path).Should().BeTrue("tests/RigLang.Cli.Tests/Golden/{0}.txt holds what the terminal shows", name);
        actual.Should().Be(File.ReadAllText(path));
    }

    private static string FolderOf([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "Golden");
}
