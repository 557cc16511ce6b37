using System.Text;

namespace RigLang.EndToEnd;

/// <summary>Whatever a file holds: a message, an exit code that means something, and no trace of the program's insides.</summary>
public sealed class BadInputTests
{
    public static TheoryData<string, byte[]> Junk
    {
        get
        {
            var random = new Random(20261125);
            var noise = new byte[64 * 1024];
            random.NextBytes(noise);
            return new()
            {
                { "random bytes", noise },
                { "nothing but NUL", new byte[4096] },
                { "half a character", [.. "vehicle van\n    wheelbase 2.94 "u8, 0xC2] },
                { "UTF-16", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("vehicle van\n    wheelbase 2.94 m\n")).ToArray() },
            };
        }
    }

    public static TheoryData<string, string> Absurd => new()
    {
        { "deep indentation", string.Concat(Enumerable.Range(0, 2000).Select(depth => new string(' ', depth * 4) + "axle front\n")) },
        { "a wheelbase of nothing", "vehicle van\n    wheelbase 0 m\n    overhang 1 m\n    axle front\n        carries 0 kg\n    axle rear\n        carries 0 kg\nrig r\n    vehicle van\n" },
        { "a negative mass", "trailer t\n    mass -1790 kg\n    tongue -168 kg\n" },
        { "a number with a thousand digits", "trailer t\n    mass " + new string('9', 1000) + " kg\n" },
        { "a sum of a thousand terms", "trailer t\n    mass " + string.Join(" + ", Enumerable.Repeat("1 kg", 1000)) + "\n" },
        { "units without end", "trailer t\n    mass 1 " + string.Join("·", Enumerable.Repeat("kg", 1000)) + "\n" },
        { "brackets", "trailer t\n    mass " + new string('(', 10_000) + "1 kg" + new string(')', 10_000) + "\n" },
        { "like in a circle", "vehicle a like b\nvehicle b like a\n" },
        { "like oneself", "vehicle a like a\n    wheelbase 2.9 m\n" },
        { "a use that leaves the folder", "use \"../../../../../../../etc/passwd\"\n" },
        { "a use of the folder itself", "use \".\"\n" },
    };

    [Theory]
    [MemberData(nameof(Junk))]
    public async Task Bytes_that_are_no_text_are_reported(string what, byte[] bytes)
    {
        using var folder = new TemporaryFolder();
        folder.Write("junk.rig", bytes);

        var outcome = await Riglang.RunAsync(folder.Path, "check", "junk.rig");

        outcome.ExitCode.Should().BeOneOf([2, 3], $"{what} is not a rig: {outcome.Everything}");
        outcome.Everything.Should().Contain("junk.rig");
        ShouldHideItsInsides(outcome);
    }

    [Theory]
    [MemberData(nameof(Absurd))]
    public async Task Text_that_means_nothing_is_reported(string what, string text)
    {
        using var folder = new TemporaryFolder();
        folder.Write("absurd.rig", text);

        var outcome = await Riglang.RunAsync(folder.Path, "check", "absurd.rig");

        outcome.ExitCode.Should().Be(2, $"{what}: {outcome.Everything}");
        outcome.Output.Should().Contain("absurd.rig:").And.MatchRegex(@"RL\d\d\d");
        outcome.Output.Should().NotContain("NaN").And.NotContain("∞");
        ShouldHideItsInsides(outcome);
    }

    [Fact]
    public async Task A_line_of_ten_megabytes_is_survived()
    {
        using var folder = new TemporaryFolder();
        folder.Write("long.rig", "vehicle van\n    wheelbase " + new string('9', 10_000_000) + " m\n    overhang 1 kg\n");

        var outcome = await Riglang.RunAsync(folder.Path, "check", "long.rig");

        outcome.ExitCode.Should().Be(2);
        outcome.Output.Length.Should().BeLessThan(100_000, "the line itself is not thrown at the reader");
        ShouldHideItsInsides(outcome);
    }

    [Fact]
    public async Task Files_that_use_each_other_in_a_circle_are_fine()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.rig", "use \"b.rig\"\nload one\n    on vehicle\n        item box 1 kg at 1 m behind front-axle\n");
        folder.Write("b.rig", "use \"a.rig\"\nload two\n    on vehicle\n        item box 1 kg at 1 m behind front-axle\n");

        var outcome = await Riglang.RunAsync(folder.Path, "check", "a.rig", "b.rig");

        outcome.ExitCode.Should().Be(0, outcome.Everything);
    }

    [Fact]
    public async Task The_rest_of_a_file_with_a_bad_line_is_still_checked()
    {
        using var folder = new TemporaryFolder("people-carrier");
        folder.Replace("1-van.rig", "2.94 m", "@@@@ \"");
        folder.Replace("1-van.rig", "1.09 m", "1.09 kg");

        var outcome = await Riglang.RunAsync(folder.Path, "check", "1-van.rig");

        outcome.ExitCode.Should().Be(2);
        outcome.Output.Should().Contain("@@@@").And.Contain("1.09 kg");
    }

    [Fact]
    public async Task A_missing_part_is_reported_where_it_is_used()
    {
        using var folder = new TemporaryFolder("people-carrier");
        File.Delete(Path.Combine(folder.Path, "3-hitch.rig"));

        var outcome = await Riglang.RunAsync(folder.Path, "check", "6-rigs.rig");

        outcome.ExitCode.Should().Be(2);
        outcome.Output.Should().Contain("6-rigs.rig:").And.Contain("3-hitch.rig");
    }

    private static void ShouldHideItsInsides(Outcome outcome)
    {
        outcome.Everything.Should().NotMatchRegex(@"(?m)^\s+at \S+\(.*\)").And.NotContain("Exception");
    }
}
