using System.Text;

namespace RigLang.Cli.Tests;

public sealed class FormatTests : IDisposable
{
    private const string Crooked = "vehicle van\n  wheelbase 2.9 m   \n  overhang  1.0 m # to the ball\n";
    private const string Straight = "vehicle van\n    wheelbase 2.9 m\n    overhang  1.0 m # to the ball\n";

    private readonly Cli cli = new();

    public void Dispose() => cli.Dispose();

    [Fact]
    public async Task Sets_a_file_right_in_its_place()
    {
        var run = await cli.With("van.rig", Crooked).Run("format");

        run.Code.Should().Be(0);
        cli.Read("van.rig").Should().Be(Straight);
        run.Out.Should().Contain("formatted van.rig").And.Contain("1 of 1 file changed.");
        Directory.GetFiles(cli.Folder).Should().ContainSingle("no temporary file may stay behind");
    }

    [Fact]
    public async Task Check_lists_and_changes_nothing()
    {
        var run = await cli.With("van.rig", Crooked).With("good.rig", Straight).Run("format", "--check");

        run.Code.Should().Be(1);
        run.Out.Should().Contain("would change van.rig").And.NotContain("good.rig");
        cli.Read("van.rig").Should().Be(Crooked);
        (await cli.Run("format", "--check", "good.rig")).Code.Should().Be(0);
    }

    [Fact]
    public async Task Standard_input_comes_back_on_standard_output_and_nothing_else_does()
    {
        var run = await cli.RunWithInput(Crooked, "format", "-");

        run.Should().Be(new Run(0, Straight, ""));
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public async Task Keeps_line_endings(string ending)
    {
        await cli.With("van.rig", Crooked.Replace("\n", ending, StringComparison.Ordinal)).Run("format");

        cli.Read("van.rig").Should().Be(Straight.Replace("\n", ending, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Keeps_the_byte_order_mark()
    {
        await cli.With("van.rig", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Crooked)]).Run("format");

        File.ReadAllBytes(Path.Combine(cli.Folder, "van.rig")).Should().Equal([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Straight)]);
    }

    [Fact]
    public async Task Leaves_what_is_no_text_untouched_and_says_so()
    {
        byte[] bytes = [.. Encoding.UTF8.GetBytes("vehicle van\n  note \"caf"), 0xE9, (byte)'"', (byte)'\n'];
        var run = await cli.With("van.rig", bytes).Run("format");

        run.Code.Should().Be(3);
        run.Error.Should().Contain("van.rig: line 2 isn't UTF-8; save it as UTF-8");
        File.ReadAllBytes(Path.Combine(cli.Folder, "van.rig")).Should().Equal(bytes);
    }

    [Fact]
    public async Task Keeps_permissions_and_links()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        cli.With("real/van.rig", Crooked);
        var real = Path.Combine(cli.Folder, "real/van.rig");
        File.SetUnixFileMode(real, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        var link = Path.Combine(cli.Folder, "link.rig");
        File.CreateSymbolicLink(link, real);

        await cli.Run("format", "link.rig");

        File.ReadAllText(real).Should().Be(Straight);
        File.GetUnixFileMode(real).Should().Be(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        new FileInfo(link).LinkTarget.Should().Be(real);
    }

    [Fact]
    public async Task A_read_only_file_is_left_alone()
    {
        cli.With("van.rig", Crooked);
        var path = Path.Combine(cli.Folder, "van.rig");
        File.SetAttributes(path, FileAttributes.ReadOnly);
        try
        {
            var run = await cli.Run("format");

            run.Code.Should().Be(3);
            run.Error.Should().Contain("read-only");
            cli.Read("van.rig").Should().Be(Crooked);
        }
        finally
        {
            File.SetAttributes(path, FileAttributes.Normal);
        }
    }
}
