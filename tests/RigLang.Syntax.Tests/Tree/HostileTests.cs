using System.Diagnostics;
using RigLang.Syntax.Formatting;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Tree;

/// <summary>Input that is large or senseless on purpose. The bounds are wide: they tell linear from quadratic, not fast from slow.</summary>
public class HostileTests
{
    private const int Large = 10_000_000;

    public static TheoryData<string, string, int> Repeated => new()
    {
        { "    a ", "a", Large },
        { "    a ", "1", Large },
        { "    a 5", "k", Large },
        { "    a ", "1,", Large / 2 },
        { "    a 5 ", "m/", Large / 2 },
        { "    a 5", "ft1", Large / 3 },
        { "    a ", ".", Large },
        { "    a ", "\"", Large },
        { "    a ", "\u201C ", Large / 2 },
        { "    a ", "\u200B ", Large / 2 },
        { "    a ", "\u00A0", Large },
        { "    a ", "(", Large },
        { "    a 5' ", " ", Large },
        { "    tyres ", "245/55 ", Large / 7 },
        { "vehicle ", "a ", Large / 2 },
        { "use ", "a", Large },
        { "", "\t", Large },
        { "", "\0", Large },
        { "", "\uD800", Large },
        { "", "A", Large },
        { "", "\n", Large / 10 },
        { "", "\r", Large / 10 },
    };

    [Theory]
    [MemberData(nameof(Repeated))]
    public void A_line_without_end_is_read_in_reasonable_time(string start, string piece, int times)
    {
        var text = start + string.Concat(Enumerable.Repeat(piece, times));
        var clock = Stopwatch.StartNew();
        var file = FileSyntax.Parse(text);
        Formatter.Format(file);
        clock.Elapsed.Should().BeLessThan(TimeSpan.FromSeconds(20));
        file.ToString().Should().Be(text);
        file.Findings().Should().HaveCountLessThan(1000).And.NotContain(at => at.Finding.Message.Length > 400 || at.Finding.Fixes.Any(fix => fix.NewText.Length > 1000));
    }

    [Fact]
    public void Nesting_without_end_gives_a_tree_that_can_be_walked()
    {
        const int deep = 10_000;
        var text = "vehicle van\n" + string.Join('\n', Enumerable.Range(1, deep).Select(column => new string(' ', column) + "axle front"));
        var file = FileSyntax.Parse(text);
        Depth(file.Declarations[0].Nodes).Should().BeLessThan(10);
        Count(file.Declarations[0].Nodes).Should().Be(deep);
        file.Findings().Should().OnlyContain(at => at.Finding.Check.Slug == "nested-too-deep");
        Formatter.FormatText(file).Should().Be(text + "\n");
    }

    [Fact]
    public void A_hundred_thousand_indented_lines_are_nested_in_reasonable_time()
    {
        var text = "vehicle van\n" + string.Join('\n', Enumerable.Range(0, 100_000).Select(line => new string(' ', (line % 40) + 1) + "axle front"));
        var clock = Stopwatch.StartNew();
        var file = FileSyntax.Parse(text);
        clock.Elapsed.Should().BeLessThan(TimeSpan.FromSeconds(20));
        Count(file.Declarations[0].Nodes).Should().Be(100_000);
    }

    [Theory]
    [InlineData(1, 0, char.MaxValue)]
    [InlineData(2, 0, 255)]
    [InlineData(3, 32, 127)]
    public void Binary_junk_is_read(int seed, int low, int high)
    {
        var random = new Random(seed);
        var junk = string.Create(200_000, random, (span, source) =>
        {
            foreach (ref var c in span)
            {
                c = source.Next(30) == 0 ? '\n' : (char)source.Next(low, high + 1);
            }
        });
        var file = FileSyntax.Parse(junk);
        file.ToString().Should().Be(junk);
        file.Findings().Should().NotBeEmpty().And.OnlyContain(at => at.Finding.Message.Length < 400);
    }

    private static int Depth(IReadOnlyCollection<NodeSyntax> nodes) => nodes.Count == 0 ? 0 : 1 + nodes.Max(node => Depth(node.Children));

    private static int Count(IReadOnlyCollection<NodeSyntax> nodes) => nodes.Sum(node => 1 + Count(node.Children));
}
