using System.Text.Json;
using RigLang.Analysis.Checks;
using RigLang.Analysis.Results;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Cli.Tests;

public sealed class ExplainTests : IDisposable
{
    private readonly Cli cli = new();

    public void Dispose() => cli.Dispose();

    private static IReadOnlyList<string> Words =>
    [
        .. AnalysisChecks.Declarations.SelectMany(check => new[] { check.Code, check.Slug }),
        .. Catalogue.Results.Select(result => result.Name),
        .. Vocabulary.Blocks.SelectMany(block => block.Facts).SelectMany(fact => new[] { fact.Keyword, fact.FullName }).Distinct(),
        .. UnitTable.Spellings,
    ];

    [Fact]
    public async Task Every_word_of_the_language_is_explained_in_80_columns()
    {
        foreach (var word in Words)
        {
            var run = await cli.Run("explain", word);

            run.Code.Should().Be(0, "`{0}` is a word of the language", word);
            // The examples are somebody's files and stay as they are.
            run.Lines.TakeWhile(line => !line.StartsWith("  reported for", StringComparison.Ordinal)).Should().OnlyContain(line => line.Length <= 80, "of `{0}`", word);
        }
    }

    [Theory]
    [InlineData("noseweight", "`noseweight` is called `tongue-rating` or `tongue` here.")]
    [InlineData("GVWR", "`GVWR` is called `gross-rating` here.")]
    public async Task A_word_used_elsewhere_leads_to_ours(string word, string answer) =>
        (await cli.Run("explain", word)).Flat.Should().StartWith(answer);

    [Fact]
    public async Task An_unknown_word_is_answered_with_the_nearest()
    {
        var run = await cli.Run("explain", "axle-ratng");

        run.Code.Should().Be(3);
        run.Error.Should().Contain("Did you mean `axle-rating`?");
    }

    [Fact]
    public async Task A_check_is_explained_with_the_way_to_accept_it_if_there_is_one()
    {
        (await cli.Run("explain", "RL901")).Out.Should().Contain("allow expectation-missed because");
        (await cli.Run("explain", "unknown-check")).Out.Should().NotContain("or accept");
    }

    [Fact]
    public async Task Reasons_are_there_for_other_programs_with_file_line_and_value_as_written()
    {
        var run = await cli.With("pair.rig", Rigs.Fine).Run("explain", "rear-axle-load", "--of", "pair", "--json");

        var document = JsonDocument.Parse(run.Out).RootElement;
        (document.GetProperty("format").GetString(), document.GetProperty("version").GetInt32()).Should().Be(("riglang-explain", 1));
        var result = document.GetProperty("results")[0];
        // By moments about the front axle: 900 kg, the driver's 80 kg at 1.5 of 3 m, and 60 kg of tongue 4 m behind it.
        result.GetProperty("value").GetDouble().Should().BeApproximately(900 + (80 * 1.5 / 3) + (60 * 4 / 3.0), 1e-6);
        var steps = result.GetProperty("steps").EnumerateArray().ToList();
        steps[0].GetProperty("formula").GetString().Should().NotBeNullOrEmpty();
        steps[0].GetProperty("source").GetString().Should().NotBeNullOrEmpty();
        steps[0].GetProperty("because").EnumerateArray().Should().NotBeEmpty();
        var wheelbase = steps.Single(step => step.GetProperty("name").GetString() == "vehicle.wheelbase");
        (wheelbase.GetProperty("sort").GetString(), wheelbase.GetProperty("path").GetString(), wheelbase.GetProperty("line").GetInt32(), wheelbase.GetProperty("shown").GetString(), wheelbase.GetProperty("value").GetDouble())
            .Should().Be(("written", "pair.rig", 2, "3.00 m", 3.0));
        steps.SelectMany(step => step.GetProperty("because").EnumerateArray()).Should().OnlyContain(index => index.GetInt32() > 0 && index.GetInt32() < steps.Count);
        // Half a metre rearward moves 80 kg × 0.5 ÷ 3 onto the rear axle.
        var move = result.GetProperty("moves").EnumerateArray().Single(move => move.GetProperty("words").GetString()!.Contains("driver") && move.GetProperty("stepUnit").GetString() == "m");
        move.GetProperty("difference").GetDouble().Should().BeApproximately(80 * 0.5 / 3, 1e-6);
    }

    [Fact]
    public async Task Reasons_as_data_are_of_one_result() =>
        (await cli.With("pair.rig", Rigs.Fine).Run("explain", "tongue-ratio", "--json")).Should().Match<Run>(run => run.Code == 3 && run.ErrorWords.Contains("--of NAME"));

    [Fact]
    public async Task A_result_of_a_rig_is_explained_down_to_the_lines_of_its_files()
    {
        var run = await cli.With("pair.rig", Rigs.Fine).Run("explain", "tongue-ratio", "--of", "rig", "pair");

        run.Code.Should().Be(0);
        run.Lines.Should().HaveElementAt(0, "rig pair").And.HaveElementAt(1, "Tongue share  7.5 %").And.HaveElementAt(2, "  = tongue-load ÷ trailer-load");
        run.Flat.Should().Contain("tongue of trailer box 60 kg pair.rig:18");
        run.Lines.Should().OnlyContain(line => line.Length <= 80);
    }

    [Theory]
    [InlineData("tongue-ratoi", "pair", "Did you mean `tongue-ratio`?")]
    [InlineData("tongue-ratio", "piar", "Did you mean `pair`?")]
    [InlineData("arrival", "pair", "`arrival` is a result of a leg; rig pair has none.")]
    public async Task What_can_not_be_explained_says_why(string result, string name, string words)
    {
        var run = await cli.With("pair.rig", Rigs.Fine).Run("explain", result, "--of", name);

        run.Code.Should().Be(3);
        run.ErrorWords.Should().Contain(words);
    }

    [Theory]
    [InlineData("checks", "RL901 expectation-missed")]
    [InlineData("facts", "wheelbase")]
    [InlineData("results", "tongue-ratio")]
    [InlineData("units", "lbf")]
    public async Task Lists_all_of_a_sort(string sort, string one)
    {
        var run = await cli.Run("explain", "--list", sort);

        run.Code.Should().Be(0);
        run.Out.Should().Contain(one);
        run.Lines.Should().OnlyContain(line => line.Length <= 80);
    }
}
