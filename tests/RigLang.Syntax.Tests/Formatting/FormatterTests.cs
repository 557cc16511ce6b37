using FsCheck.Xunit;
using RigLang.Syntax.Formatting;
using RigLang.Syntax.Tests.Tree;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Formatting;

public class FormatterTests
{
    [Theory]
    [InlineData("vehicle van\n  wheelbase 2.94 m\n", "vehicle van\n    wheelbase 2.94 m\n")]
    [InlineData("vehicle van\n  axle front\n       carries 5 kg\n", "vehicle van\n    axle front\n        carries 5 kg\n")]
    [InlineData("vehicle van\n\taxle front\n\t\tcarries\t\t5 kg\n", "vehicle van\n    axle front\n        carries     5 kg\n")]
    [InlineData("vehicle van  \n    mass 5 kg \t\n", "vehicle van\n    mass 5 kg\n")]
    [InlineData("vehicle van\n    mass 5 kg", "vehicle van\n    mass 5 kg\n")]
    [InlineData("vehicle van\r\n    mass 5 kg", "vehicle van\r\n    mass 5 kg\r\n")]
    [InlineData("vehicle van\n    speed-limit>5 kg\n", "vehicle van\n    speed-limit >5 kg\n")]
    [InlineData("vehicle van\n    mass     5 kg   # weighed\n", "vehicle van\n    mass     5 kg   # weighed\n")] // columns are the author's
    [InlineData("vehicle van\n    mass 5 kg\t# weighed\t\ttwice\n", "vehicle van\n    mass 5 kg   # weighed\t\ttwice\n")]
    [InlineData("vehicle van\n    note \"a\tb\"\n", "vehicle van\n    note \"a\tb\"\n")]
    [InlineData("vehicle van\n  # on mass\n  mass 5 kg\n", "vehicle van\n    # on mass\n    mass 5 kg\n")]
    [InlineData("vehicle van\n  mass 5 kg\n  # behind mass\n\ntrailer wren\n", "vehicle van\n    mass 5 kg\n    # behind mass\n\ntrailer wren\n")]
    [InlineData("vehicle van\n# far left\n  mass 5 kg\n", "vehicle van\n# far left\n    mass 5 kg\n")]
    [InlineData("\n\n\n", "\n\n\n")]
    [InlineData("", "")]
    [InlineData("   ", "")]
    public void Lines_are_set_right(string text, string formatted) => Formatter.FormatText(FileSyntax.Parse(text)).Should().Be(formatted);

    [Theory]
    [InlineData("vehicle van\n  mass\t4,032 lb  \n", "vehicle van\n    mass\t4,032 lb\n")] // a line with an error gets its indent and nothing else
    [InlineData("vehicle van\nmass 5 kg\n  length 5 m\n", "vehicle van\nmass 5 kg\n  length 5 m\n")] // an indent in doubt keeps all of its declaration
    [InlineData("vehicle van\n   note \"open  \n", "vehicle van\n    note \"open\n")]
    public void What_is_wrong_is_left_to_its_author(string text, string formatted) => Formatter.FormatText(FileSyntax.Parse(text)).Should().Be(formatted);

    [Fact]
    public void A_range_touches_only_its_lines()
    {
        var file = FileSyntax.Parse("vehicle van\n  mass 5 kg\n  length 5 m\n  width 2 m");
        Formatter.Format(file, 2, 2).Should().Equal(new LineEdit(2, "    length 5 m"));
        Formatter.Format(file, -5, 1).Should().Equal(new LineEdit(1, "    mass 5 kg"));
        Formatter.Format(file, 3, 99).Should().Equal(new LineEdit(3, "    width 2 m\n"));
        Formatter.Format(file, 9, 2).Should().BeEmpty();
    }

    [Property(MaxTest = 1500)]
    public void Formatting_twice_is_formatting_once(int seed)
    {
        var once = Formatter.FormatText(FileSyntax.Parse(new RandomText(seed).Text(60)));
        Formatter.FormatText(FileSyntax.Parse(once)).Should().Be(once);
    }

    [Property(MaxTest = 1500)]
    public void Formatting_changes_no_atom_no_comment_and_no_owner(int seed)
    {
        var file = FileSyntax.Parse(new RandomText(seed).Text(60));
        var formatted = FileSyntax.Parse(Formatter.FormatText(file));
        Meaning(formatted).Should().Equal(Meaning(file));
    }

    [Property(MaxTest = 500)]
    public void Formatting_adds_no_finding(int seed)
    {
        var file = FileSyntax.Parse(new RandomText(seed).Text(60));
        var formatted = FileSyntax.Parse(Formatter.FormatText(file));
        formatted.Findings().Count().Should().BeLessThanOrEqualTo(file.Findings().Count());
    }

    /// <summary>Every word and sign with the depth of its line, and every comment; no blanks.</summary>
    private static IEnumerable<string> Meaning(FileSyntax file)
    {
        foreach (var declaration in file.Declarations)
        {
            var depths = new Dictionary<int, int>();
            var open = new Stack<(NodeSyntax Node, int Depth)>(declaration.Nodes.Select(node => (node, 1)));
            while (open.TryPop(out var next))
            {
                depths[next.Node.Line] = next.Depth;
                foreach (var child in next.Node.Children)
                {
                    open.Push((child, next.Depth + 1));
                }
            }

            for (var i = 0; i < declaration.Lines.Length; i++)
            {
                var line = declaration.Lines[i];
                if (line.Statement is { } statement)
                {
                    var span = TextSpan.FromBounds(statement.Span.Start, line.Comment?.Start ?? line.Text.Length);
                    yield return $"{depths.GetValueOrDefault(i)} {string.Concat(line.TextOf(span).Where(c => c is not (' ' or '\t')))}";
                }

                if (line.Comment is { } comment)
                {
                    yield return line.TextOf(comment).TrimEnd(' ', '\t');
                }
            }
        }
    }
}
