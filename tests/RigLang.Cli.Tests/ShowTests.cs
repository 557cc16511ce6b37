using System.Text.Json;

namespace RigLang.Cli.Tests;

public sealed class ShowTests : IDisposable
{
    private readonly Cli cli = new();

    public void Dispose() => cli.Dispose();

    [Fact]
    public async Task Shows_the_room_to_each_limit_the_tightest_first()
    {
        var run = await cli.With("pair.rig", Rigs.Fine).Run("show", "pair");

        run.Code.Should().Be(0);
        var limits = run.Lines.SkipWhile(line => line != "Room to each limit, tightest first").Skip(1).TakeWhile(line => line.Length > 0).ToList();
        // 1000 kg weighed and 40 kg of the driver in the middle, less 60 kg × 1 m ÷ 3 m: 1020 of 1400 kg.
        limits.Should().Contain(line => line.Contains("380 kg left") && line.Contains("1020 kg of 1400 kg"));
        limits[0].Should().Contain("200 kg left").And.Contain("800 kg of 1000 kg");
    }

    [Theory]
    [InlineData("metric", "800 kg")]
    [InlineData("us", "1764 lb")]
    [InlineData("written", "800 kg")]
    public async Task Shows_units_as_asked(string units, string mass)
    {
        var run = await cli.With("pair.rig", Rigs.Fine).Run("show", "pair", "--units", units);

        run.Lines.Single(line => line.Contains("Trailer, loaded")).Should().EndWith(mass);
    }

    [Fact]
    public async Task Follows_the_units_of_the_author()
    {
        var text = Rigs.Fine.Replace(" kg", " lb", StringComparison.Ordinal).Replace(" m\n", " ft\n", StringComparison.Ordinal);
        var run = await cli.With("pair.rig", text).Run("show", "pair");

        run.Lines.Single(line => line.Contains("Trailer, loaded")).Should().EndWith("800 lb");
    }

    [Fact]
    public async Task Says_what_a_result_lacks()
    {
        var run = await cli.With("pair.rig", Rigs.Fine.Replace("    coupling-to-axle 3.00 m\n", "", StringComparison.Ordinal)).Run("show", "pair");

        run.Flat.Should().Contain("not computed: needs `coupling-to-axle` of trailer box");
    }

    [Fact]
    public async Task Lists_what_a_result_put_in_the_place_of_a_line_that_it_looked_for_in_vain()
    {
        const string Hitch = "hitch bars\n    type weight-distributing\n    tongue-rating 100 kg\n\nrig pair";
        var text = Rigs.Fine.Replace("rig pair", Hitch, StringComparison.Ordinal) + "    hitch           bars\n    restoration     50 %\n";
        var run = await cli.With("pair.rig", text).Run("show", "pair");

        run.Lines.SkipWhile(line => line != "Estimated, until a line says better").Should().Contain(line => line.Contains("bar-rating") && line.Contains("hitch bars"));
    }

    [Fact]
    public async Task Json_tells_each_result_with_the_facts_that_went_into_it()
    {
        var root = await CheckJsonTests.Json(cli.With("pair.rig", Rigs.Fine), "show", "pair", "--json");

        root.GetProperty("format").GetString().Should().Be("riglang-show");
        root.GetProperty("version").GetInt32().Should().Be(1);
        var subject = root.GetProperty("subjects")[0];
        (subject.GetProperty("kind").GetString(), subject.GetProperty("name").GetString(), subject.GetProperty("title").GetString()).Should().Be(("rig", "pair", "Van and box"));
        var result = Result(subject, "tongue-ratio");
        result.GetProperty("value").GetDouble().Should().BeApproximately(0.075, 1e-12);
        result.GetProperty("unit").GetString().Should().Be("1");
        result.GetProperty("shown").GetString().Should().Be("7.5 %");
        result.GetProperty("estimated").GetBoolean().Should().BeFalse();
        var tongue = result.GetProperty("facts").EnumerateArray().Single(fact => fact.GetProperty("fact").GetString() == "trailer.tongue");
        tongue.GetProperty("origin").GetString().Should().Be("written");
        tongue.GetProperty("text").GetString().Should().Be("tongue          60 kg");
        tongue.GetProperty("place").GetProperty("line").GetInt32().Should().Be(18);
        tongue.GetProperty("value").GetDouble().Should().Be(60);
    }

    [Fact]
    public async Task Json_tells_what_a_result_needs()
    {
        var text = Rigs.Fine.Replace("    tongue          60 kg\n", "", StringComparison.Ordinal);
        var root = await CheckJsonTests.Json(cli.With("pair.rig", text), "show", "pair", "--json");

        var result = Result(root.GetProperty("subjects")[0], "tongue-ratio");
        result.TryGetProperty("value", out _).Should().BeFalse();
        result.GetProperty("needs").GetProperty("fact").GetString().Should().Be("trailer.tongue");
    }

    [Fact]
    public async Task A_name_borne_by_two_is_asked_about()
    {
        var run = await cli.With("a.rig", Rigs.Fine).With("b.rig", Rigs.Fine).Run("show", "pair");

        run.Code.Should().Be(3);
        run.Error.Should().Contain("a.rig:30:5").And.Contain("b.rig:30:5").And.Contain("--in PATH");
        (await cli.Run("show", "pair", "--in", "b.rig")).Out.Should().Contain("b.rig:30:5");
        (await cli.Run("show", "b.rig", "rig", "pair")).Out.Should().Contain("b.rig:30:5");
    }

    [Fact]
    public async Task A_part_has_no_results_by_itself()
    {
        var run = await cli.With("pair.rig", Rigs.Fine).Run("show", "van");

        run.Code.Should().Be(3);
        run.Error.Should().Contain("vehicle van has no results by itself").And.Contain("rig pair");
    }

    private static JsonElement Result(JsonElement subject, string name) =>
        subject.GetProperty("results").EnumerateArray().Single(result => result.GetProperty("name").GetString() == name);
}
