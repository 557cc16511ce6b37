using System.Text.Json;

namespace RigLang.Cli.Tests;

/// <summary>The examples as a newcomer would look at them.</summary>
public sealed class ExamplesTests
{
    private static readonly string Root = Path.GetFullPath(Path.Combine(Golden.Folder, "../../.."));

    public static TheoryData<string, string> Subjects => new()
    {
        { "people-carrier", "coast" }, { "people-carrier", "coast-full" }, { "people-carrier", "saddle" }, { "people-carrier", "september" },
        { "pick-up", "tour" }, { "pick-up", "tour-july" }, { "pick-up", "lake" }, { "pick-up", "may" },
        { "firewood", "saturday" }, { "firewood", "yard" }, { "overloaded", "too-much" },
    };

    [Theory]
    [MemberData(nameof(Subjects))]
    public async Task Is_shown_in_80_columns_in_any_units(string folder, string name)
    {
        foreach (var units in new[] { "written", "metric", "us" })
        {
            var run = await Cli.RunIn(Root, "", "show", name, "--in", $"examples/{folder}", "--units", units);

            run.Code.Should().Be(0);
            run.Error.Should().BeEmpty();
            run.Lines.Should().OnlyContain(line => line.Length <= 80);
            run.Out.Should().NotContain("NaN").And.NotContain("∞").And.NotContain("unknown kg");
        }
    }

    [Theory]
    [MemberData(nameof(Subjects))]
    public async Task Has_results_for_other_programs_each_with_its_facts(string folder, string name)
    {
        var run = await Cli.RunIn(Root, "", "show", name, "--in", $"examples/{folder}", "--json");

        var results = JsonDocument.Parse(run.Out).RootElement.GetProperty("subjects")[0].GetProperty("results").EnumerateArray().ToList();
        results.Should().HaveCountGreaterThan(5);
        results.Should().OnlyContain(result => Has(result, "value") == Has(result, "shown"));
        results.Where(result => Has(result, "value")).Should().OnlyContain(result => result.GetProperty("facts").GetArrayLength() > 0);
    }

    private static bool Has(JsonElement element, string name) => element.TryGetProperty(name, out _);

    [Fact]
    public async Task One_command_shows_loads_ratios_and_the_range_of_each_leg()
    {
        var run = await Cli.RunIn(Root, "", "check", "examples");

        run.Lines.Should().OnlyContain(line => line.Length <= 80);
        run.Lines.Should().Contain("rig coast  People carrier and caravan, autumn load").And.Contain("trip saddle  Two days over the saddle");
        run.Lines.Should().Contain(line => line.StartsWith("  loads   front ", StringComparison.Ordinal));
        run.Lines.Should().Contain(line => line.StartsWith("  ratios  tongue ", StringComparison.Ordinal));
        run.Lines.SkipWhile(line => !line.StartsWith("trip saddle", StringComparison.Ordinal)).Should().Contain(line => line.StartsWith("  Quarry services ", StringComparison.Ordinal) && line.Contains("km"));
    }

    [Fact]
    public async Task Two_runs_say_the_same_in_the_same_order() =>
        (await Cli.RunIn(Root, "", "check", "examples")).Should().Be(await Cli.RunIn(Root, "", "check", "examples"));
}
