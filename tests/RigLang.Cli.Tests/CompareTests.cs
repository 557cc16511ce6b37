using System.Text.Json;

namespace RigLang.Cli.Tests;

public sealed class CompareTests : IDisposable
{
    private readonly GitFolder git = new();

    public void Dispose() => git.Dispose();

    private static string Edited(string old, string now) => Rigs.Fine.Contains(old, StringComparison.Ordinal) ? Rigs.Fine.Replace(old, now, StringComparison.Ordinal) : throw new ArgumentException(old);

    [Fact]
    public async Task Without_words_the_last_commit_is_compared_with_the_files_as_they_are()
    {
        var run = await git.With("pair.rig", Rigs.Fine).Committed("Weighed").With("pair.rig", Edited("carries     1000 kg", "carries     1060 kg")).Run("compare");

        run.Code.Should().Be(0);
        run.Lines.First().Should().MatchRegex("^[0-9]+ results moved; no limit is crossed\\.$");
        run.Lines.ElementAt(1).Should().MatchRegex("^HEAD \\([0-9a-f]{7,}, 2026-10-01\\) → the files as they are$");
        run.Out.Should().Contain("carries 1000 kg → carries 1060 kg");
        run.Lines.Should().Contain(line => line.Contains("Axle front") && line.Contains("380 kg left") && line.Contains("320 kg left"));
    }

    [Fact]
    public async Task A_rig_stands_beside_the_one_that_it_is_like()
    {
        var run = await git.With("pair.rig", Rigs.Fine + "\nrig fast like pair\n    speed 100 km/h\n").Run("beside", "fast");

        run.Code.Should().Be(0);
        run.Out.Should().Contain("What differs").And.Contain("100 km/h");
        (await git.Run("beside", "pair")).Should().Match<Run>(alone => alone.Code == 3 && alone.Error.Contains("isn't `like` another"));
        (await git.Run("beside", "fast", "nobody")).Code.Should().Be(3);
    }

    [Fact]
    public async Task What_is_committed_and_unchanged_differs_in_nothing()
    {
        var run = await git.With("pair.rig", Rigs.Fine).Committed("Weighed").Run("compare");

        run.Should().Match<Run>(run => run.Code == 0 && run.Lines.First() == "Nothing differs.");
    }

    [Fact]
    public async Task Two_revisions_are_compared_with_the_used_files_of_each()
    {
        var at = Rigs.Fine.IndexOf("\nrig pair", StringComparison.Ordinal) + 1;
        git.With("parts.rig", Rigs.Fine[..at]).With("pair.rig", "use \"parts.rig\"\n\n" + Rigs.Fine[at..]).Committed("One");
        git.With("parts.rig", Rigs.Fine[..at].Replace("carries     1000 kg", "carries     1030 kg", StringComparison.Ordinal)).Committed("Two");
        git.With("parts.rig", "nonsense\n");

        var run = await git.Run("compare", "HEAD~1", "HEAD", "--in", "pair.rig");

        run.Code.Should().Be(0);
        run.Out.Should().Contain("carries 1000 kg → carries 1030 kg");
        (await git.Run("compare", "HEAD~1..HEAD", "--in", "pair.rig")).Out.Should().Be(run.Out);
    }

    [Fact]
    public async Task A_limit_that_is_crossed_comes_first_and_ends_with_2()
    {
        var run = await git.With("pair.rig", Rigs.Fine).Committed("Weighed").With("pair.rig", Edited("carries     1000 kg", "carries     1500 kg")).Run("compare");

        run.Code.Should().Be(2);
        run.Lines.First().Should().StartWith("A limit is crossed: rig pair, Axle front, 120 kg over");
        run.Flat.Should().Contain("new error RL3");
    }

    [Fact]
    public async Task Strict_ends_with_1_when_a_result_moved()
    {
        git.With("pair.rig", Rigs.Fine).Committed("Weighed").With("pair.rig", Edited("carries     1000 kg", "carries     1001 kg"));

        (await git.Run("compare", "--strict")).Code.Should().Be(1);
        (await git.Run("compare")).Code.Should().Be(0);
    }

    [Fact]
    public async Task Two_files_are_compared_whatever_they_are_called()
    {
        var run = await git.With("old.rig", Rigs.Fine).With("new.rig", Edited("carries     1000 kg", "carries     1060 kg")).Run("compare", "old.rig", "new.rig");

        run.Code.Should().Be(0);
        run.Out.Should().Contain("carries 1000 kg → carries 1060 kg").And.Contain("old.rig → new.rig");
    }

    [Fact]
    public async Task Two_folders_meet_by_the_paths_in_them()
    {
        var run = await git.With("a/pair.rig", Rigs.Fine).With("b/pair.rig", Edited("carries     1000 kg", "carries     1060 kg")).Run("compare", "a", "b");

        run.Out.Should().Contain("carries 1000 kg → carries 1060 kg");
    }

    [Fact]
    public async Task A_file_that_one_revision_lacks_counts_as_come()
    {
        var run = await git.With("other.rig", "vehicle x\n    wheelbase 3 m\n").Committed("Other").With("pair.rig", Rigs.Fine).Run("compare");

        run.Code.Should().Be(0);
        run.Out.Should().Contain("added rig pair");
    }

    [Fact]
    public async Task A_state_that_cannot_be_read_shows_its_errors_and_its_lines()
    {
        var run = await git.With("pair.rig", Rigs.Fine).Committed("Weighed").With("pair.rig", Edited("carries     1000 kg", "carries     heavy")).Run("compare");

        run.Code.Should().Be(2);
        run.Flat.Should().Contain("pair.rig: 1 error now, none before, so its lines are shown as they are.");
        run.Lines.Should().Contain(line => line.StartsWith("  + ", StringComparison.Ordinal) && line.EndsWith("heavy", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Markdown_is_a_page_with_the_verdict_first()
    {
        var run = await git.With("pair.rig", Rigs.Fine).Committed("Weighed").With("pair.rig", Edited("carries     1000 kg", "carries     1060 kg")).Run("compare", "--markdown");

        run.Lines.First().Should().StartWith("**").And.EndWith("**");
        run.Lines.Should().Contain("| changed | vehicle van, axle front, carries | `carries 1000 kg` | `carries 1060 kg` |");
    }

    [Fact]
    public async Task Json_tells_values_in_si_and_each_share()
    {
        var run = await git.With("pair.rig", Rigs.Fine).Committed("Weighed").With("pair.rig", Edited("carries     1000 kg", "carries     1060 kg")).Run("compare", "--json");

        using var document = JsonDocument.Parse(run.Out);
        var root = document.RootElement;
        root.GetProperty("format").GetString().Should().Be("riglang-compare");
        root.GetProperty("verdict").GetString().Should().Be("results-moved");
        var mass = root.GetProperty("results").EnumerateArray().Single(result => result.GetProperty("name").GetString() == "vehicle-load");
        mass.GetProperty("difference").GetDouble().Should().BeApproximately(60, 1e-6);
        mass.GetProperty("because")[0].GetProperty("difference").GetDouble().Should().BeApproximately(60, 1e-6);
        mass.GetProperty("because")[0].GetProperty("change").GetInt32().Should().Be(0);
    }

    [Theory]
    [InlineData("nothing~like~it", "no such revision, and no such file or folder")]
    [InlineData("gone.rig", "no .rig file there")]
    public async Task What_is_not_there_is_said_and_ends_with_3(string word, string words)
    {
        var run = await git.With("pair.rig", Rigs.Fine).Committed("Weighed").Run("compare", word);

        run.Code.Should().Be(3);
        run.ErrorWords.Should().Contain(words);
    }

    [Fact]
    public async Task A_path_and_a_revision_are_not_compared_and_the_way_is_told() =>
        (await git.With("pair.rig", Rigs.Fine).Committed("Weighed").Run("compare", "HEAD", "pair.rig")).Should().Match<Run>(run => run.Code == 3 && run.ErrorWords.Contains("--in PATH"));

    [Fact]
    public async Task A_repository_without_commits_says_so() =>
        (await git.With("pair.rig", Rigs.Fine).Run("compare")).Should().Match<Run>(run => run.Code == 3 && run.ErrorWords.Contains("there is no commit yet"));

    [Fact]
    public async Task A_folder_outside_version_control_has_no_revisions()
    {
        using var plain = new Cli();
        (await plain.With("pair.rig", Rigs.Fine).Run("compare")).Should().Match<Run>(run => run.Code == 3 && run.ErrorWords.Contains("in no git work tree"));
    }

    [Fact]
    public async Task A_shallow_clone_says_that_it_is_shallow()
    {
        git.With("pair.rig", Rigs.Fine).Committed("One").With("pair.rig", Edited("carries     1000 kg", "carries     1001 kg")).Committed("Two");
        git.Git("clone", "--quiet", "--depth", "1", "file://" + git.Folder, "clone");

        var run = await Cli.RunIn(Path.Combine(git.Folder, "clone"), "", "compare", "HEAD~1");

        run.Code.Should().Be(3);
        run.ErrorWords.Should().Contain("the clone is shallow");
    }

    [Fact]
    public async Task A_word_that_looks_like_an_option_of_git_is_no_option() =>
        (await git.With("pair.rig", Rigs.Fine).Committed("Weighed").Run("compare", "--in", "pair.rig", "main:--output=x")).Should().Match<Run>(run => run.Code == 3 && !File.Exists(Path.Combine(git.Folder, "x")));
}
