using System.Text.Json;

namespace RigLang.Cli.Tests;

public sealed class CheckJsonTests : IDisposable
{
    private readonly Cli cli = new();

    public void Dispose() => cli.Dispose();

    [Fact]
    public async Task Names_its_format_and_counts()
    {
        var root = await Json(cli.With("pair.rig", Rigs.Missed), "check", "--json");

        root.GetProperty("format").GetString().Should().Be("riglang-check");
        root.GetProperty("version").GetInt32().Should().Be(1);
        root.GetProperty("riglang").GetString().Should().MatchRegex(@"^\d+\.\d+\.\d+");
        var summary = root.GetProperty("summary");
        summary.GetProperty("errors").GetInt32().Should().Be(1);
        summary.GetProperty("files").GetInt32().Should().Be(1);
    }

    [Fact]
    public async Task Tells_a_finding_with_its_place_counted_from_1()
    {
        var root = await Json(cli.With("pair.rig", Rigs.Missed), "check", "--json");

        var finding = root.GetProperty("files")[0].GetProperty("findings")[0];
        finding.GetProperty("code").GetString().Should().Be("RL901");
        finding.GetProperty("slug").GetString().Should().Be("expectation-missed");
        finding.GetProperty("severity").GetString().Should().Be("error");
        finding.GetProperty("message").GetString().Should().Contain("`tongue-ratio`");
        var place = finding.GetProperty("place");
        place.GetProperty("path").GetString().Should().Be("pair.rig");
        (place.GetProperty("line").GetInt32(), place.GetProperty("column").GetInt32(), place.GetProperty("endColumn").GetInt32()).Should().Be((34, 5, 30));
    }

    [Fact]
    public async Task Tells_fixes_as_edits()
    {
        var root = await Json(cli.With("van.rig", "vehicle van\n    weelbase 2.9 m\n"), "check", "--json");

        var fixes = root.GetProperty("files")[0].GetProperty("findings").EnumerateArray().SelectMany(finding => finding.GetProperty("fixes").EnumerateArray());
        fixes.SelectMany(fix => fix.GetProperty("edits").EnumerateArray()).Select(edit => edit.GetProperty("newText").GetString()).Should().Contain("wheelbase");
    }

    [Fact]
    public async Task Tells_what_was_accepted_and_why()
    {
        var root = await Json(cli.With("pair.rig", Rigs.Missed + "    allow expectation-missed because \"the scale was wet\"\n"), "check", "--json");

        var file = root.GetProperty("files")[0];
        file.GetProperty("findings").GetArrayLength().Should().Be(0);
        file.GetProperty("accepted")[0].GetProperty("reason").GetString().Should().Be("the scale was wet");
    }

    [Fact]
    public async Task Tells_what_could_not_be_read_and_still_ends_with_3()
    {
        var run = await cli.With("junk.rig", [0, 1, 2, 3]).Run("check", "--json");

        run.Code.Should().Be(3);
        var problem = JsonDocument.Parse(run.Out).RootElement.GetProperty("problems")[0];
        problem.GetProperty("path").GetString().Should().Be("junk.rig");
        problem.GetProperty("problem").GetString().Should().Contain("zero byte");
    }

    internal static async Task<JsonElement> Json(Cli cli, params string[] arguments)
    {
        var run = await cli.Run(arguments);
        run.Error.Should().BeEmpty();
        return JsonDocument.Parse(run.Out).RootElement;
    }
}
