namespace RigLang.Cli.Tests;

public sealed class ExitCodeTests : IDisposable
{
    private readonly Cli cli = new();

    public void Dispose() => cli.Dispose();

    [Fact]
    public async Task Check_of_a_rig_without_fault_ends_with_0()
    {
        var run = await cli.With("pair.rig", Rigs.Fine).Run("check");

        run.Out.Should().Contain("rig pair  Van and box").And.NotContain("error");
        run.Code.Should().Be(0);
    }

    [Fact]
    public async Task An_error_in_a_file_ends_with_2()
    {
        var run = await cli.With("pair.rig", Rigs.Missed).Run("check");

        run.Code.Should().Be(2);
        run.Out.Should().Contain("pair.rig:34:5: error RL901 expectation-missed");
    }

    [Theory]
    [InlineData("nowhere", "nowhere: no such file or folder")]
    [InlineData("notes.txt", "notes.txt: not a .rig file")]
    [InlineData("empty", "empty: no .rig file in this folder or below it")]
    [InlineData("", "no path of a file or folder")]
    public async Task A_path_that_stands_for_nothing_ends_with_3_and_says_why(string path, string words)
    {
        Directory.CreateDirectory(Path.Combine(cli.Folder, "empty"));
        var run = await cli.With("notes.txt", "").Run("check", path);

        run.Code.Should().Be(3);
        run.ErrorWords.Should().Contain(words);
    }

    [Fact]
    public async Task What_can_be_checked_is_checked_though_another_path_is_missing()
    {
        var run = await cli.With("pair.rig", Rigs.Missed).Run("check", "gone.rig", "pair.rig");

        run.Code.Should().Be(3);
        run.Out.Should().Contain("RL901");
    }

    [Fact]
    public async Task Warnings_count_with_strict_only()
    {
        cli.With("pair.rig", Rigs.Fine.TrimEnd() + "\n    allow expectation-missed because \"nothing here\"\n");

        (await cli.Run("check")).Code.Should().Be(0);
        (await cli.Run("check", "--strict")).Code.Should().Be(1);
    }

    [Theory]
    [InlineData("chek")]
    [InlineData("check", "--jsn")]
    [InlineData("show", "pair", "--units", "stone")]
    [InlineData("show", "--in")]
    public async Task A_command_line_that_is_not_understood_ends_with_3_and_shows_where_help_is(params string[] arguments)
    {
        var run = await cli.Run(arguments);

        run.Code.Should().Be(3);
        run.Error.Should().Contain("--help");
        run.Out.Should().BeEmpty();
    }

    [Fact]
    public async Task A_mistyped_word_is_answered_with_the_one_that_was_meant()
    {
        (await cli.Run("chek")).Error.Should().Contain("Did you mean `check`?");
        (await cli.Run("check", "--jsn")).Error.Should().Contain("Did you mean `--json`?");
    }

    [Fact]
    public async Task A_name_that_is_nowhere_ends_with_3_and_names_the_nearest()
    {
        var run = await cli.With("pair.rig", Rigs.Fine).Run("show", "piar");

        run.Code.Should().Be(3);
        run.ErrorWords.Should().Contain("Did you mean `pair`?").And.Contain("rig pair");
    }
}
