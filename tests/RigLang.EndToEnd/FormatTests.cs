using System.Text.RegularExpressions;

namespace RigLang.EndToEnd;

public sealed class FormatTests
{
    [Fact]
    public async Task The_examples_need_no_formatting()
    {
        using var folder = new TemporaryFolder("people-carrier");

        var outcome = await Riglang.RunAsync(folder.Path, "format", "--check");

        outcome.ExitCode.Should().Be(0, outcome.Everything);
    }

    [Fact]
    public async Task Check_names_the_untidy_file_and_leaves_it_alone()
    {
        using var folder = new TemporaryFolder("people-carrier");
        folder.Write("1-van.rig", HalfIndented(folder.Read("1-van.rig")));
        var before = folder.Read("1-van.rig");

        var outcome = await Riglang.RunAsync(folder.Path, "format", "--check");

        outcome.ExitCode.Should().Be(1);
        outcome.Everything.Should().Contain("1-van.rig");
        folder.Read("1-van.rig").Should().Be(before);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public async Task A_file_is_mended_in_place_and_keeps_its_line_ends(string end)
    {
        using var folder = new TemporaryFolder("people-carrier");
        var tidy = folder.Read("1-van.rig").ReplaceLineEndings(end);
        folder.Write("1-van.rig", HalfIndented(tidy));

        var outcome = await Riglang.RunAsync(folder.Path, "format", "1-van.rig");

        outcome.ExitCode.Should().Be(0, outcome.Everything);
        folder.Read("1-van.rig").Should().Be(tidy);
    }

    [Fact]
    public async Task Standard_input_goes_to_standard_output()
    {
        using var folder = new TemporaryFolder();

        var outcome = await Riglang.RunAsync(folder.Path, "vehicle van # ours\n  wheelbase 2.94 m\n", ["format", "-"]);

        outcome.Should().Be(new Outcome(0, "vehicle van # ours\n    wheelbase 2.94 m\n", ""));
    }

    private static string HalfIndented(string text) => Regex.Replace(text, "(?m)^(?: {4})+", indent => new string(' ', indent.Length / 2));
}
