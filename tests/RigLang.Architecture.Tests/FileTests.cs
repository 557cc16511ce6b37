using System.Text.RegularExpressions;

namespace RigLang.Architecture.Tests;

public sealed partial class FileTests
{
    private const int LongestFile = 400;

    [Fact]
    public void Every_file_of_code_is_short_enough_to_hold_one_thing() =>
        Source.Files("src", ".cs").Concat(Source.Files("tests", ".cs")).Select(file => (file, lines: Source.Read(file).Count(c => c == '\n')))
            .Where(pair => pair.lines > LongestFile).Should().BeEmpty();

    [Fact]
    public void No_file_names_a_place_on_somebodys_machine() =>
        Texts.Where(file => HomeFolder().IsMatch(Source.Read(file))).Should().BeEmpty();

    [Fact]
    public void Text_is_utf8_without_mark_and_with_line_feeds() =>
        Texts.Where(file => !file.Contains("/Fixtures/", StringComparison.Ordinal)).Where(file => Source.Read(file).Contains('\r', StringComparison.Ordinal) || HasMark(file)).Should().BeEmpty();

    private static readonly string[] Folders = ["src", "tests", "docs", "examples", "editor-client"];

    private static IEnumerable<string> Texts =>
        Folders.SelectMany(folder => Source.Files(folder, ".cs", ".md", ".rig", ".ts", ".mjs", ".lua", ".json", ".csproj"));

    private static bool HasMark(string file)
    {
        using var stream = File.OpenRead(Path.Combine(Source.Root, file));
        return stream.ReadByte() == 0xEF && stream.ReadByte() == 0xBB;
    }

    [GeneratedRegex(@"(?<![\w.])(/(home|Users|root)/|[A-Z]:\\Users\\)(?!(user|ann|bob|you)\b)\w+")]
    private static partial Regex HomeFolder();
}
