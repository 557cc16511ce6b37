using FsCheck.Xunit;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Tree;

public class ChangeTests
{
    [Property(MaxTest = 600)]
    public void A_changed_file_is_the_file_of_the_changed_text(int seed)
    {
        var random = new RandomText(seed);
        var file = FileSyntax.Parse(random.Text(60));
        for (var edit = 0; edit < 8; edit++)
        {
            var (start, end) = (Place(random, file), Place(random, file));
            var inserted = random.Text(4);
            var expected = Splice(file, start, end, inserted);
            file = file.WithChange(start, end, inserted);
            ShouldEqual(file, FileSyntax.Parse(expected));
        }
    }

    [Theory]
    [InlineData("a\nb", 0, 1, 0, 1, "\r", "a\r\nb", 2)] // joins: CR before LF
    [InlineData("a\rb", 1, 0, 1, 0, "\n", "a\r\nb", 2)] // joins: LF behind CR
    [InlineData("a\r\nb", 0, 1, 0, 1, "\n", "a\n\r\nb", 3)]
    [InlineData("a\r\nb", 0, 1, 1, 0, "\r", "a\rb", 2)]
    [InlineData("a\rx\nb", 1, 0, 1, 1, "", "a\r\nb", 2)] // what stood between CR and LF is gone
    [InlineData("a\r\n", 1, 0, 1, 0, "\n", "a\r\n\n", 3)]
    [InlineData("", 0, 0, 0, 0, "\r\n", "\r\n", 2)]
    public void Line_breaks_are_split_and_joined(string text, int line1, int char1, int line2, int char2, string inserted, string expected, int lines)
    {
        var file = FileSyntax.Parse(text).WithChange(new LinePosition(line1, char1), new LinePosition(line2, char2), inserted);
        file.ToString().Should().Be(expected);
        file.Lines.Length.Should().Be(lines);
        ShouldEqual(file, FileSyntax.Parse(expected));
    }

    [Theory]
    [InlineData(-3, 7, 0, 0)]
    [InlineData(0, 99, 0, 2)] // not inside the CR LF
    [InlineData(99, 0, 1, 2)]
    [InlineData(1, -5, 1, 0)]
    public void A_place_outside_the_file_is_cut_to_it(int line, int character, int expectedLine, int expectedCharacter) =>
        FileSyntax.Parse("ab\r\ncd").Clamp(new LinePosition(line, character)).Should().Be(new LinePosition(expectedLine, expectedCharacter));

    [Fact]
    public void Untouched_lines_and_declarations_stay_the_same_objects()
    {
        var file = FileSyntax.Parse(Fixture.LargeFile(1000));
        var line = file.FirstLines[5] + 2;
        var changed = file.WithChange(new LinePosition(line, 0), new LinePosition(line, 0), "# ");
        for (var i = 0; i < file.Lines.Length; i++)
        {
            ReferenceEquals(file.Lines[i], changed.Lines[i]).Should().Be(i != line);
        }

        for (var i = 0; i < file.Declarations.Length; i++)
        {
            ReferenceEquals(file.Declarations[i], changed.Declarations[i]).Should().Be(i != 5);
        }
    }

    [Fact]
    public void An_added_line_moves_the_declarations_below_unchanged()
    {
        var file = FileSyntax.Parse(Fixture.LargeFile(1000));
        var changed = file.WithChange(new LinePosition(file.FirstLines[5], 0), new LinePosition(file.FirstLines[5], 0), "# a remark\n");
        changed.Declarations.Skip(5).Should().Equal(file.Declarations.Skip(5));
        changed.FirstLines.Skip(5).Should().Equal(file.FirstLines.Skip(5).Select(line => line + 1));
        changed.Declarations.Take(4).Should().Equal(file.Declarations.Take(4));
    }

    [Fact]
    public void Replacing_the_whole_text_keeps_what_is_the_same()
    {
        var file = FileSyntax.Parse(Fixture.LargeFile(1000));
        var text = file.ToString();
        var edited = text.Replace("Two spring bars", "Three spring bars", StringComparison.Ordinal);
        file.WithChange(default, new LinePosition(int.MaxValue, 0), text).Should().BeSameAs(file);
        var changed = file.WithChange(default, new LinePosition(int.MaxValue, 0), edited);
        changed.ToString().Should().Be(edited);
        changed.Declarations[0].Should().BeSameAs(file.Declarations[0]);
    }

    [Fact]
    public void The_declaration_of_a_line_is_found()
    {
        var file = FileSyntax.Parse("# head\nvehicle van\n    mass 5 kg\n\ntrailer wren\n");
        new[] { -1, 0, 1, 2, 3, 4, 5, 99 }.Select(file.DeclarationAt).Should().Equal(0, 0, 1, 1, 1, 2, 2, 2);
    }

    private static LinePosition Place(RandomText random, FileSyntax file) => new(random.Next(file.Lines.Length + 1), random.Next(12));

    private static string Splice(FileSyntax file, LinePosition start, LinePosition end, string inserted)
    {
        var (from, to) = (Offset(file, start), Offset(file, end));
        var text = file.ToString();
        return text[..Math.Min(from, to)] + inserted + text[Math.Max(from, to)..];
    }

    private static int Offset(FileSyntax file, LinePosition position)
    {
        if (position.Line >= file.Lines.Length)
        {
            return file.ToString().Length;
        }

        var before = file.Lines.Take(position.Line).Sum(line => line.Text.Length + (line.Break == LineBreak.CarriageReturnLineFeed ? 2 : 1));
        return before + Math.Min(position.Character, file.Lines[position.Line].Text.Length);
    }

    private static void ShouldEqual(FileSyntax file, FileSyntax parsed)
    {
        file.ToString().Should().Be(parsed.ToString());
        file.FirstLines.Should().Equal(parsed.FirstLines);
        file.Lines.Select(line => line.Break).Should().Equal(parsed.Lines.Select(line => line.Break));
        file.Declarations.Select(Shape).Should().Equal(parsed.Declarations.Select(Shape));
        file.Findings().Select(Told).Should().Equal(parsed.Findings().Select(Told));
    }

    private static string Told((int Line, RigLang.Syntax.Checks.LineFinding Finding) at) => $"{at.Line} {at.Finding.Check.Code} {at.Finding.Span} {at.Finding.Message}";

    private static string Shape(DeclarationSyntax declaration)
    {
        var lines = new List<string> { declaration.Head?.GetType().Name ?? "none", declaration.Lines.Length.ToString() };
        var open = new Stack<(NodeSyntax Node, int Depth)>(declaration.Nodes.Select(node => (node, 1)));
        while (open.TryPop(out var next))
        {
            lines.Add($"{next.Depth} {next.Node.Line} {next.Node.Fact.Keyword} {next.Node.Fact.Arguments.Length}");
            foreach (var child in next.Node.Children)
            {
                open.Push((child, next.Depth + 1));
            }
        }

        return string.Join('|', lines);
    }
}
