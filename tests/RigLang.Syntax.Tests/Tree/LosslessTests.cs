using FsCheck.Xunit;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Tree;

public class LosslessTests
{
    [Property(MaxTest = 500)]
    public void Any_string_comes_back_to_the_letter(string? text) => FileSyntax.Parse(text ?? "").ToString().Should().Be(text ?? "");

    [Property(MaxTest = 2000)]
    public void Text_like_a_rig_file_comes_back_to_the_letter(int seed)
    {
        var text = new RandomText(seed).Text(60);
        FileSyntax.Parse(text).ToString().Should().Be(text);
    }

    [Property(MaxTest = 1000)]
    public void Every_span_lies_in_its_line(int seed)
    {
        var file = FileSyntax.Parse(new RandomText(seed).Text(60));
        foreach (var (line, finding) in file.Findings())
        {
            Inside(finding.Span, file.Lines[line]);
            foreach (var fix in finding.Fixes)
            {
                Inside(fix.Span, file.Lines[line]);
            }
        }

        foreach (var line in file.Lines.Where(line => line.Statement is FactSyntax))
        {
            var fact = (FactSyntax)line.Statement!;
            if (line.Findings.IsEmpty)
            {
                Names.Compose(line.TextOf(fact.Keyword.Span)).Should().Be(fact.Keyword.Text);
            }

            Names.IsName(fact.Keyword.Text).Should().BeTrue();
            var end = fact.Keyword.Span.End;
            foreach (var argument in fact.Arguments)
            {
                argument.Span.Start.Should().BeGreaterThanOrEqualTo(end, "arguments stand side by side in {0}", line.Text);
                end = argument.Span.End;
            }

            fact.Span.End.Should().Be(end);
            end.Should().BeLessThanOrEqualTo(line.Comment?.Start ?? line.Text.Length);
        }
    }

    [Property(MaxTest = 1000)]
    public void Every_character_is_in_an_argument_a_blank_or_the_comment(int seed)
    {
        foreach (var line in FileSyntax.Parse(new RandomText(seed).Text(40)).Lines)
        {
            var covered = new bool[line.Text.Length];
            Cover(line.Comment);
            switch (line.Statement)
            {
                case FactSyntax fact:
                    Cover(fact.Keyword.Span);
                    fact.Arguments.ToList().ForEach(argument => Cover(argument.Span));
                    break;
                case { } head:
                    Cover(head.Span);
                    break;
            }

            for (var i = 0; i < covered.Length; i++)
            {
                (covered[i] || char.IsWhiteSpace(line.Text[i]) || (i == 0 && line.Text[i] == '\uFEFF')).Should().BeTrue("character {0} of {1} is kept", i, line.Text);
            }

            void Cover(TextSpan? span)
            {
                for (var i = span?.Start ?? 0; i < (span?.End ?? 0); i++)
                {
                    covered[i] = true;
                }
            }
        }
    }

    private static void Inside(TextSpan span, LineSyntax line)
    {
        span.Start.Should().BeInRange(0, line.Text.Length);
        span.End.Should().BeInRange(span.Start, line.Text.Length);
    }
}
