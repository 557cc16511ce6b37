using RigLang.Syntax.Formatting;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests;

public class FixtureTests
{
    public static TheoryData<string> Names => new(Fixture.Names);

    [Theory]
    [MemberData(nameof(Names))]
    public void Examples_are_read_without_a_finding(string name) => FileSyntax.Parse(Fixture.Text(name)).Findings().Should().BeEmpty();

    [Theory]
    [MemberData(nameof(Names))]
    public void Examples_are_read_alike_with_every_line_break(string name)
    {
        foreach (var lineBreak in new[] { "\r\n", "\r" })
        {
            var text = Fixture.Text(name).ReplaceLineEndings(lineBreak);
            var file = FileSyntax.Parse(text);
            file.ToString().Should().Be(text);
            file.Findings().Should().BeEmpty();
            file.Declarations.Length.Should().Be(FileSyntax.Parse(Fixture.Text(name)).Declarations.Length);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Examples_are_formatted_already(string name) => Formatter.Format(FileSyntax.Parse(Fixture.Text(name))).Should().BeEmpty();
}
