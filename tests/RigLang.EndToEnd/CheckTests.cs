using System.Text.Json;

namespace RigLang.EndToEnd;

public sealed class CheckTests
{
    [Theory]
    [InlineData("people-carrier")]
    [InlineData("pick-up")]
    [InlineData("firewood")]
    public async Task An_example_has_no_errors_and_no_warnings(string example)
    {
        using var folder = new TemporaryFolder(example);

        var outcome = await Riglang.RunAsync(folder.Path, "check", "--strict");

        outcome.ExitCode.Should().Be(0, outcome.Everything);
        outcome.Errors.Should().BeEmpty();
    }

    [Fact]
    public async Task The_overloaded_rig_is_refused()
    {
        using var folder = new TemporaryFolder("overloaded");

        var outcome = await Riglang.RunAsync(folder.Path, "check");

        outcome.ExitCode.Should().Be(2);
        outcome.Output.Should().Contain("too-much.rig");
    }

    [Fact]
    public async Task An_error_shows_its_code_its_line_and_a_caret_under_the_place()
    {
        using var folder = new TemporaryFolder("people-carrier");
        folder.Replace("1-van.rig", "2.94 m", "2.94 kg");

        var outcome = await Riglang.RunAsync(folder.Path, "check", "1-van.rig");

        outcome.ExitCode.Should().Be(2);
        outcome.Output.Should().MatchRegex(@"^1-van\.rig:4:\d+: error RL2\d\d ");
        var lines = outcome.Output.Split('\n');
        var excerpt = Array.FindIndex(lines, line => line.Contains("2.94 kg", StringComparison.Ordinal) && line.Contains("wheelbase", StringComparison.Ordinal));
        excerpt.Should().BeGreaterThan(-1, "the line itself is shown");
        var unit = lines[excerpt].IndexOf("kg", StringComparison.Ordinal);
        (lines[excerpt + 1].IndexOf('^', StringComparison.Ordinal), lines[excerpt + 1].Count(c => c == '^')).Should().Be((unit, 2), outcome.Output);
    }

    [Fact]
    public async Task What_is_written_fits_eighty_columns_and_has_no_colour_codes_when_nobody_looks()
    {
        using var folder = new TemporaryFolder("overloaded");

        var outcome = await Riglang.RunAsync(folder.Path, "check");

        outcome.Output.Should().NotContain("\u001b");
        outcome.Output.Split('\n').Where(line => line.TrimEnd('\r').Length > 80).Should().BeEmpty();
    }

    [Fact]
    public async Task Json_names_every_finding_with_its_file_place_code_and_message()
    {
        using var folder = new TemporaryFolder("people-carrier");
        folder.Replace("1-van.rig", "2.94 m", "2.94 kg");

        var outcome = await Riglang.RunAsync(folder.Path, "check", "--json", "1-van.rig");

        outcome.ExitCode.Should().Be(2);
        outcome.Errors.Should().BeEmpty();
        using var json = JsonDocument.Parse(outcome.Output);
        json.RootElement.GetProperty("version").GetInt32().Should().Be(1);
        json.RootElement.GetProperty("summary").GetProperty("errors").GetInt32().Should().Be(1);
        var file = json.RootElement.GetProperty("files").EnumerateArray().Single();
        file.GetProperty("path").GetString().Should().Be("1-van.rig");
        var finding = file.GetProperty("findings").EnumerateArray().Single(finding => finding.GetProperty("severity").GetString() == "error");
        finding.GetProperty("code").GetString().Should().MatchRegex(@"^RL2\d\d$");
        finding.GetProperty("message").GetString().Should().Contain("length");
        var place = finding.GetProperty("place");
        var line = folder.Read("1-van.rig").Split('\n')[place.GetProperty("line").GetInt32() - 1];
        line[(place.GetProperty("column").GetInt32() - 1)..(place.GetProperty("endColumn").GetInt32() - 1)].Should().Be("kg");
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_named_and_the_program_could_not_run()
    {
        using var folder = new TemporaryFolder();

        var outcome = await Riglang.RunAsync(folder.Path, "check", "nowhere.rig");

        outcome.ExitCode.Should().Be(3);
        outcome.Errors.Should().Contain("nowhere.rig");
    }

    [Fact]
    public async Task Warnings_fail_the_run_only_when_asked_to()
    {
        using var folder = new TemporaryFolder("people-carrier");
        folder.Replace("1-van.rig", "    wheelbase", "\twheelbase");

        var lenient = await Riglang.RunAsync(folder.Path, "check", "1-van.rig");
        var strict = await Riglang.RunAsync(folder.Path, "check", "--strict", "1-van.rig");

        (lenient.ExitCode, strict.ExitCode).Should().Be((0, 1), strict.Everything);
    }
}
