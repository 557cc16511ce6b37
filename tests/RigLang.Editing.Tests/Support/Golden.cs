using System.Runtime.CompilerServices;

namespace RigLang.Editing.Tests.Support;

/// <summary>
/// Hovers as an editor shows them, kept beside the tests for people to read. <c>RIGLANG_REWRITE_GOLDEN=1 dotnet test tests/RigLang.Editing.Tests</c> writes the
/// files again; read the difference before it is committed. Where tests run by themselves (CI is set) the switch has no effect.
/// </summary>
internal static class Golden
{
    private static readonly string Folder = Path.Combine(Path.GetDirectoryName(Here())!, "..", "Golden");

    public static void Holds(string name, string actual)
    {
        var path = Path.Combine(Folder, name + ".md");
        actual += "\n";
        if (Environment.GetEnvironmentVariable("RIGLANG_REWRITE_GOLDEN") == "1" && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("CI")))
        {
            Directory.CreateDirectory(Folder);
            File.WriteAllText(path, actual);
        }

        File.Exists(path).Should().BeTrue("tests/RigLang.Editing.Tests/Golden/{0}.md holds what the editor shows", name);
        actual.Should().Be(File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    private static string Here([CallerFilePath] string here = "") => here;
}
