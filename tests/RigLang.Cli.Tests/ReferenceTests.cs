using RigLang.Editing.Reference;

namespace RigLang.Cli.Tests;

public sealed class ReferenceTests : IDisposable
{
    private readonly Cli cli = new();

    public void Dispose() => cli.Dispose();

    [Fact]
    public async Task Writes_every_page_takes_left_over_ones_away_and_then_has_nothing_to_do()
    {
        cli.With("docs/checks/RL099-no-longer.md", "old");

        (await cli.Run("reference", "--write", ".")).Out.Should().Contain("0 as they were, 1 removed.");

        foreach (var page in ReferencePages.All())
        {
            cli.Read(page.Path).Should().Be(page.Text);
        }

        (await cli.Run("reference", "--write", ".")).Out.Should().Contain(": 0 written,").And.Contain("0 removed.");
    }

    [Fact]
    public async Task Is_not_listed_for_users() => (await cli.Run("--help")).Out.Should().NotContain("reference");

    [Fact]
    public async Task A_folder_that_is_not_there_ends_with_3() => (await cli.Run("reference", "--write", "nowhere")).Code.Should().Be(3);
}
