using System.Text.RegularExpressions;

namespace RigLang.Cli.Tests;

/// <summary>
/// What the pages show of the program is what it prints: every block of a page that begins with <c>$ riglang …</c> is run on the examples. A line of <c>…</c> stands
/// for any number of lines; a line that ends with it for any end.
/// </summary>
public sealed partial class DocumentedOutputTests
{
    private static readonly string Root = Path.GetFullPath(Path.Combine(Golden.Folder, "../../.."));

    public static TheoryData<string, string> Blocks
    {
        get
        {
            var blocks = new TheoryData<string, string>();
            foreach (var page in Directory.EnumerateFiles(Path.Combine(Root, "docs"), "*.md").Append(Path.Combine(Root, "README.md")).Order(StringComparer.Ordinal))
            {
                foreach (Match block in ConsoleBlock().Matches(File.ReadAllText(page)))
                {
                    blocks.Add(Path.GetRelativePath(Root, page), block.Groups["command"].Value);
                }
            }

            return blocks;
        }
    }

    [Theory]
    [MemberData(nameof(Blocks))]
    public async Task A_page_shows_what_the_program_prints(string page, string command)
    {
        var shown = ConsoleBlock().Matches(File.ReadAllText(Path.Combine(Root, page))).First(block => block.Groups["command"].Value == command).Groups["output"].Value;

        var run = await Cli.RunIn(Root, "", command.Split(' '));

        run.Error.Should().BeEmpty();
        Matches(shown.TrimEnd('\n').Split('\n'), run.Out.TrimEnd('\n').Split('\n')).Should().BeTrue("{0} shows of `riglang {1}`\n{2}\nand it prints\n{3}", page, command, shown, run.Out);
    }

    [Theory]
    [InlineData("a\n…\nd", "a\nb\nc\nd", true)]
    [InlineData("a\n…\nd", "a\nd", true)]
    [InlineData("a b…\nc", "a bd\nc", true)]
    [InlineData("a\nd", "a\nb\nd", false)]
    [InlineData("…\nb", "a\nb\nc", false)]
    public void What_is_left_out_is_marked(string shown, string printed, bool fits) =>
        Matches(shown.Split('\n'), printed.Split('\n')).Should().Be(fits);

    private static bool Matches(ReadOnlySpan<string> shown, ReadOnlySpan<string> printed)
    {
        if (shown.IsEmpty)
        {
            return printed.IsEmpty;
        }

        if (shown[0] == "…")
        {
            for (var skipped = 0; skipped <= printed.Length; skipped++)
            {
                if (Matches(shown[1..], printed[skipped..]))
                {
                    return true;
                }
            }

            return false;
        }

        return !printed.IsEmpty && IsSame(shown[0], printed[0]) && Matches(shown[1..], printed[1..]);
    }

    private static bool IsSame(string shown, string printed) => shown.EndsWith('…') ? printed.StartsWith(shown[..^1], StringComparison.Ordinal) : shown == printed;

    [GeneratedRegex("^```console\\n\\$ riglang (?<command>[^\\n]+)\\n(?<output>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex ConsoleBlock();
}
