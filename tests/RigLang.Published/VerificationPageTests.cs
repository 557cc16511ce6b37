namespace RigLang.Published;

public sealed class VerificationPageTests
{
    /// <summary>With RIGLANG_REWRITE=1 the page is written anew in place of the comparison.</summary>
    [Fact]
    public void The_page_in_docs_is_the_one_that_the_checks_make()
    {
        string path = Path.Combine(Root(), "docs", "verification.md"), page = VerificationPage.Render();
        if (Environment.GetEnvironmentVariable("RIGLANG_REWRITE") == "1")
            File.WriteAllText(path, page);
        string written = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        (written == page).Should().BeTrue("docs/verification.md is stale: run RIGLANG_REWRITE=1 dotnet test tests/RigLang.Published");
    }

    private static string Root() => Outside.OutsideProgram.Root();
}
