namespace RigLang.EndToEnd;

/// <summary>The table of what editors get names its tests; each of them is there.</summary>
public class FeatureTableTests
{
    private static readonly Dictionary<string, (string Folder, string[] Endings)> Places = new()
    {
        ["wire"] = ("tests/RigLang.LanguageServer.Tests", [".cs"]),
        ["answers"] = ("tests/RigLang.Editing.Tests", [".cs"]),
        ["node"] = ("tests/RigLang.EndToEnd/node", [".test.mjs"]),
        ["Neovim"] = ("tests/RigLang.EndToEnd/neovim", [".lua"]),
        ["Emacs"] = ("tests/RigLang.EndToEnd/emacs", [".el"]),
        ["VS Code"] = ("tests/RigLang.EndToEnd/vscode", [".mjs", ".cjs"]),
    };

    [Fact]
    public void Every_test_that_the_table_names_is_there()
    {
        var rows = Rows();
        rows.Count.Should().BeGreaterThan(60);
        rows.Where(row => !Places.ContainsKey(row.Client)).Should().BeEmpty("each row names one of the clients");
        rows.Where(row => Places.TryGetValue(row.Client, out var place) && !TextsOf(place.Folder, place.Endings).Any(text => Names(text, row.Test, row.Client))).Should().BeEmpty("each row names a test");
    }

    [Fact]
    public void Every_feature_has_a_row_with_a_test() => Rows().Should().OnlyContain(row => row.Test.Length > 0 && row.Client.Length > 0);

    /// <summary>A C# test is a method; the others have their names in quotes, or behind a number in Emacs.</summary>
    private static bool Names(string text, string test, string client) => client switch
    {
        "wire" or "answers" => text.Contains($" {test}(", StringComparison.Ordinal),
        "Emacs" => text.Contains($"-{test} ", StringComparison.Ordinal),
        _ => text.Contains($"\"{test}\"", StringComparison.Ordinal),
    };

    private static List<(string Client, string Test)> Rows() =>
        [.. File.ReadLines(Path.Combine(Repository.Root, "docs", "editor-features.md")).SkipWhile(line => !line.StartsWith("| ---", StringComparison.Ordinal)).Skip(1)
            .TakeWhile(line => line.StartsWith('|')).Select(line => line.Split('|')).Select(cells => (cells[^3].Trim(), cells[^2].Trim()))];

    private static IEnumerable<string> TextsOf(string folder, string[] endings) =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, folder), "*", SearchOption.AllDirectories)
            .Where(file => endings.Any(ending => file.EndsWith(ending, StringComparison.Ordinal)) && !file.Contains("node_modules", StringComparison.Ordinal))
            .Select(File.ReadAllText);
}
