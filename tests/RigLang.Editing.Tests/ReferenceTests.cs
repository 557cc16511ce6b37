using System.Runtime.CompilerServices;
using RigLang.Analysis.Checks;
using RigLang.Editing.Reference;

namespace RigLang.Editing.Tests;

/// <summary>What is made from the declarations and committed must be what they make now.</summary>
public class ReferenceTests
{
    private const string Command = "dotnet run --project src/RigLang.Cli -- reference --write .";

    public static TheoryData<string> Paths => [.. ReferencePages.All().Select(page => page.Path)];

    [Theory]
    [MemberData(nameof(Paths))]
    public void The_committed_page_is_the_one_that_the_declarations_make(string path)
    {
        var page = ReferencePages.All().Single(page => page.Path == path);
        var file = Path.Combine(Root(), path);
        Rewrite(file, page.Text);
        File.Exists(file).Should().BeTrue($"{path} is missing: run `{Command}`");
        File.ReadAllText(file).ReplaceLineEndings("\n").Should().Be(page.Text, $"{path} is stale: run `{Command}`");
    }

    [Theory]
    [InlineData("docs/reference")]
    [InlineData("docs/checks")]
    public void No_page_is_left_over_from_what_is_no_longer_declared(string folder) =>
        Directory.GetFiles(Path.Combine(Root(), folder)).Select(file => $"{folder}/{Path.GetFileName(file)}").Should().BeSubsetOf(ReferencePages.All().Select(page => page.Path));

    [Fact]
    public void Every_check_has_a_page_and_a_line_in_the_list()
    {
        var pages = ReferencePages.All().ToDictionary(page => page.Path, page => page.Text);
        foreach (var check in AnalysisChecks.Declarations)
        {
            pages.Should().ContainKey($"docs/checks/{ReferencePages.NameOf(check)}");
            pages["docs/checks/README.md"].Should().Contain(ReferencePages.NameOf(check));
        }
    }

    [Fact]
    public void Every_word_of_the_grammar_template_is_filled_in() =>
        ReferencePages.All().Where(page => page.Path.EndsWith(".json", StringComparison.Ordinal)).Should().OnlyContain(page => !page.Text.Contains("{{"));

    /// <summary>The same switch as for golden files; it has no effect where tests run by themselves.</summary>
    private static void Rewrite(string file, string text)
    {
        if (Environment.GetEnvironmentVariable("RIGLANG_REWRITE_GOLDEN") == "1" && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("CI")))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, text);
        }
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
