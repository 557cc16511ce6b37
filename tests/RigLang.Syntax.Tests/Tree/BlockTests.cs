using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Tree;

public class BlockTests
{
    [Fact]
    public void Lines_are_nested_by_their_indent() => Outline("""
        vehicle van
            wheelbase 2.94 m

            axle front
                carries 1195 kg
        # a remark to the left

                track-width 1.63 m
            aboard nothing
        """).Should().Be("wheelbase axle(carries track-width) aboard");

    [Fact]
    public void Any_width_of_indent_will_do() => Outline("rig a\n  speed 5 m\n  axle front\n     carries 5 kg\n  note \"x\"").Should().Be("speed axle(carries) note");

    [Fact]
    public void A_tab_reaches_to_the_next_multiple_of_four() => Outline("rig a\n\taxle front\n  \t\tcarries 5 kg\n    note \"x\"").Should().Be("axle(carries) note");

    [Fact]
    public void A_forgotten_indent_keeps_the_fact_with_the_declaration_above()
    {
        Outline("rig a\n    speed 5 km/h\nlinks 4\n    mass 5 kg").Should().Be("speed links mass");
        Outline("rig a\n    speed 5 km/h\naxle front\n    mass 5 kg").Should().Be("speed axle(mass)"); // the head of a block takes its lines along
    }

    [Fact]
    public void An_indent_between_two_levels_is_read_with_the_lines_above()
    {
        const string text = "vehicle van\n    axle front\n        carries 5 kg\n      track-width 1 m\n        pressure 2 bar\n    note \"x\"";
        Outline(text).Should().Be("axle(carries track-width pressure) note");
        var finding = FileSyntax.Parse(text).Findings().Should().ContainSingle().Subject;
        finding.Line.Should().Be(3);
        finding.Finding.Fixes.Select(fix => fix.NewText.Length).Should().Equal(8, 4);
    }

    [Theory]
    [InlineData("    wheelbase", "  wheelbase", 1)]
    [InlineData("    wheelbase", "        wheelbase", 1)]
    [InlineData("    axle front", "  axle front", 3)]
    [InlineData("    axle front", "        axle front", 3)]
    [InlineData("    axle rear", "        axle rear", 6)]
    [InlineData("    axle rear", "            axle rear", 6)]
    [InlineData("    axle rear", "  axle rear", 6)]
    [InlineData("        carries 1195", "    carries 1195", 8)]
    [InlineData("        track-width 1.6", "            track-width 1.6", 5)]
    [InlineData("    aboard", "  aboard", 10)]
    public void A_single_wrong_indent_is_one_finding_and_moves_no_other_line(string written, string slip, int line)
    {
        const string text = """
            vehicle van
                wheelbase 2.94 m
                overhang 1.09 m
                axle front
                    carries 1250 kg
                    track-width 1.6 m
                axle rear
                    axle-rating 1300 kg
                    carries 1195 kg
                    pressure 2 bar
                aboard
                    item driver 84 kg
                electric
                    motor-power 180 kW
            """;
        var typed = text.Replace(written, slip);

        var findings = FileSyntax.Parse(typed).Findings().ToList();

        findings.Select(finding => finding.Line).Should().Equal(line);
        Outline(typed).Should().Be(Outline(text));
    }

    [Theory]
    [InlineData("wheelbase")]
    [InlineData("overhang")]
    [InlineData("axle front")]
    [InlineData("aboard")]
    public void A_fact_in_the_first_column_is_one_finding(string fact)
    {
        const string text = "vehicle van\n    wheelbase 2.94 m\n    overhang 1 m\n    axle front\n        carries 5 kg\n    aboard\n        item driver 84 kg";
        var typed = text.Replace("    " + fact, fact);

        FileSyntax.Parse(typed).Findings().Select(finding => finding.Finding.Check.Slug).Should().Equal("fact-in-first-column");
        Outline(typed).Should().Be(Outline(text));
    }

    [Fact]
    public void A_rig_whose_first_line_stands_back_keeps_its_other_lines()
    {
        const string text = "rig a\n  vehicle van\n    trailer box\n    load us\n    speed 80 km/h";

        FileSyntax.Parse(text).Findings().Should().ContainSingle().Which.Line.Should().Be(1);
        Outline(text).Should().Be("vehicle trailer load speed");
    }

    [Fact]
    public void Facts_before_the_first_opening_are_kept() => Outline("    speed 5 km/h\n        links 4").Should().Be("speed(links)");

    [Fact]
    public void The_language_line_may_follow_comments_only()
    {
        Fixture.SlugsOf("\n# remark\nlanguage 1\n").Should().BeEmpty();
        Fixture.SlugsOf("use \"a.rig\"\nlanguage 1\n").Should().Equal("language-not-first");
    }

    private static string Outline(string text)
    {
        return Of(FileSyntax.Parse(text).Declarations[0].Nodes);

        static string Of(IEnumerable<NodeSyntax> nodes) =>
            string.Join(' ', nodes.Select(node => node.Fact.Keyword.Text + (node.Children.IsEmpty ? "" : $"({Of(node.Children)})")));
    }
}
