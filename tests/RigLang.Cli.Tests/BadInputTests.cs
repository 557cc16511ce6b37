namespace RigLang.Cli.Tests;

public sealed class BadInputTests : IDisposable
{
    private readonly Cli cli = new();

    public void Dispose() => cli.Dispose();

    [Theory]
    [InlineData(new byte[] { 0x7F, (byte)'E', (byte)'L', (byte)'F', 0, 0 }, "zero byte")]
    [InlineData(new byte[] { 0xFF, 0xFE, (byte)'v', 0 }, "UTF-16; save it as UTF-8")]
    [InlineData(new byte[] { (byte)'v', (byte)'\n', 0xC3, 0x28 }, "line 2 isn't UTF-8")]
    public async Task A_file_that_is_no_text_is_told_with_its_path(byte[] bytes, string words)
    {
        var run = await cli.With("junk.rig", bytes).With("pair.rig", Rigs.Fine).Run("check");

        run.Code.Should().Be(3);
        run.Error.Should().StartWith("junk.rig: ").And.Contain(words);
        run.Out.Should().Contain("rig pair", "the other file is still checked");
    }

    [Fact]
    public async Task A_line_of_ten_megabytes_is_answered_in_a_few_columns()
    {
        var run = await cli.With("long.rig", "vehicle van\n    note \"" + new string('x', 10_000_000) + "\" 5\n").Run("check");

        run.Code.Should().BeOneOf(0, 2);
        run.Lines.Should().OnlyContain(line => line.Length <= 80);
        run.Out.Length.Should().BeLessThan(4000);
    }

    [Fact]
    public async Task A_file_longer_than_the_cap_is_not_read()
    {
        await using (var stream = File.Create(Path.Combine(cli.Folder, "huge.rig")))
        {
            stream.SetLength((32L * 1024 * 1024) + 1);
        }

        var run = await cli.Run("check");

        run.Code.Should().Be(3);
        run.Error.Should().Contain("huge.rig").And.Contain("longer than 32 MB");
    }

    [Fact]
    public async Task Circles_of_use_and_like_end()
    {
        var run = await cli.With("a.rig", "use \"b.rig\"\n\nrig one like two\n").With("b.rig", "use \"a.rig\"\n\nrig two like one\n").Run("check");

        run.Code.Should().Be(2);
        run.Out.Should().Contain("circle");
    }

    [Theory]
    [InlineData("../../etc/passwd.rig")]
    [InlineData("/etc/hostname")]
    public async Task A_path_out_of_the_workspace_is_not_followed(string path)
    {
        var run = await cli.With("a.rig", $"use \"{path}\"\n").Run("check");

        run.Code.Should().Be(2);
        run.Out.Should().Contain("a.rig:1:5: error").And.Contain("used-file-outside");
    }

    [Fact]
    public async Task A_missing_file_is_told_at_the_line_that_names_it()
    {
        var run = await cli.With("a.rig", "use \"gone.rig\"\n").Run("check");

        run.Out.Should().Contain("a.rig:1:5: error").And.Contain("no such file");
    }

    [Theory]
    [InlineData("wheelbase 0 m")]
    [InlineData("mass -5 kg")]
    [InlineData("wheelbase 2.9 furlong")]
    [InlineData("wheelbase 1e400 m")]
    public async Task Numbers_that_can_not_be_are_told_at_their_place(string line)
    {
        var run = await cli.With("van.rig", $"vehicle van\n    {line}\n").Run("check");

        run.Code.Should().Be(2);
        run.Out.Should().Contain("van.rig:2:").And.Contain("^");
    }

    [Fact]
    public async Task What_a_file_says_is_shown_and_never_obeyed()
    {
        var run = await cli.With("van.rig", "vehicle van \"a\u001b[31mred\u202Etitle\"\n    wheelbas 2.9 m \u001b]0;x\u0007\n\nrig r \"\u001b[2J\"\n    vehicle van\n").Run("check");

        run.Out.Should().NotContain("\u001b").And.NotContain("\u202E").And.NotContain("\u0007");
        (await cli.Run("show", "r")).Out.Should().NotContain("\u001b");
    }

    [Fact]
    public async Task Links_in_a_circle_do_not_hold_the_search()
    {
        cli.With("rigs/pair.rig", Rigs.Fine);
        Directory.CreateSymbolicLink(Path.Combine(cli.Folder, "rigs", "again"), cli.Folder);

        var run = await cli.Run("check");

        run.Code.Should().Be(0);
        run.Out.Should().Contain("in 1 file.");
    }

    [Fact]
    public async Task Hidden_folders_are_left_out()
    {
        var run = await cli.With(".hidden/bad.rig", "nonsense\n").With("pair.rig", Rigs.Fine).Run("check");

        run.Code.Should().Be(0);
        run.Out.Should().Contain("in 1 file.");
    }
}
