using System.Text.Json;

namespace RigLang.EndToEnd;

public sealed class ShowTests
{
    [Fact]
    public async Task Show_prints_the_computed_loads_of_a_rig()
    {
        using var folder = new TemporaryFolder("people-carrier");

        var outcome = await Riglang.RunAsync(folder.Path, "show", "coast");

        outcome.ExitCode.Should().Be(0, outcome.Everything);
        outcome.Output.Should().Contain("Front axle load").And.MatchRegex(@"Vehicle, gross\s+\d+ kg left");
        outcome.Output.Should().NotContain("\u001b");
        outcome.Output.Split('\n').Where(line => line.TrimEnd('\r').Length > 80).Should().BeEmpty();
    }

    /// <summary>The example expects 1180 kg ± 15 kg of itself, and 1211 kg ± 15 kg with the front axle fully restored.</summary>
    [Theory]
    [InlineData("coast", 1165, 1195)]
    [InlineData("coast-full", 1196, 1226)]
    public async Task Show_json_has_each_result_with_its_value_unit_and_the_facts_behind_it(string rig, double least, double most)
    {
        using var folder = new TemporaryFolder("people-carrier");

        var outcome = await Riglang.RunAsync(folder.Path, "show", "rig", rig, "--json");

        outcome.ExitCode.Should().Be(0, outcome.Everything);
        outcome.Errors.Should().BeEmpty();
        using var json = JsonDocument.Parse(outcome.Output);
        var subject = json.RootElement.GetProperty("subjects").EnumerateArray().Single();
        subject.GetProperty("name").GetString().Should().Be(rig);
        var load = subject.GetProperty("results").EnumerateArray().Single(result => result.GetProperty("name").GetString() == "front-axle-load");
        load.GetProperty("value").GetDouble().Should().BeInRange(least, most);
        load.GetProperty("unit").GetString().Should().Be("kg");
        load.GetProperty("shown").GetString().Should().EndWith(" kg");
        load.GetProperty("estimated").GetBoolean().Should().BeFalse();
        var files = load.GetProperty("facts").EnumerateArray()
            .Where(fact => fact.TryGetProperty("place", out _))
            .Select(fact => fact.GetProperty("place").GetProperty("path").GetString());
        files.Should().Contain("1-van.rig").And.Contain("4-loads.rig");
    }

    [Fact]
    public async Task The_unit_system_changes_what_is_shown_but_not_what_is_meant()
    {
        using var folder = new TemporaryFolder("people-carrier");

        var metric = await LoadAsync(folder, "metric");
        var us = await LoadAsync(folder, "us");

        us.Shown.Should().EndWith(" lb");
        us.Value.Should().Be(metric.Value);
    }

    private static async Task<(double Value, string Shown)> LoadAsync(TemporaryFolder folder, string units)
    {
        var outcome = await Riglang.RunAsync(folder.Path, "show", "rig", "coast", "--json", "--units", units);
        outcome.ExitCode.Should().Be(0, outcome.Everything);
        using var json = JsonDocument.Parse(outcome.Output);
        var results = json.RootElement.GetProperty("subjects")[0].GetProperty("results").EnumerateArray();
        var load = results.Single(result => result.GetProperty("name").GetString() == "front-axle-load");
        return (load.GetProperty("value").GetDouble(), load.GetProperty("shown").GetString()!);
    }

    [Fact]
    public async Task A_name_that_is_not_there_is_said_and_the_program_could_not_run()
    {
        using var folder = new TemporaryFolder("people-carrier");

        var outcome = await Riglang.RunAsync(folder.Path, "show", "coats");

        outcome.ExitCode.Should().Be(3);
        outcome.Errors.Should().Contain("coats").And.Contain("coast");
    }
}
