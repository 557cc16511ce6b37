using RigLang.Editing.Tests.Support;

namespace RigLang.Editing.Tests;

/// <summary>What a line takes, and which part of it comes next.</summary>
public class SignatureTests
{
    private const string Item = "item NAME MASS [water|petrol|diesel|lpg|e85] at PLACE [high HIGH] [left LEFT] [right RIGHT] [on roof]";

    [Theory]
    [InlineData("item $0", "NAME")]
    [InlineData("item dri$0ver 84 kg", "NAME")]
    [InlineData("item driver $0", "MASS")]
    [InlineData("item driver 84$0 kg", "MASS")]
    [InlineData("item driver 84 $0", "MASS")]
    [InlineData("item driver 84 kg $0", "[water|petrol|diesel|lpg|e85]")]
    [InlineData("item driver 84 kg at $0", "at PLACE")]
    [InlineData("item driver 84 kg at 1 m $0", "at PLACE")]
    [InlineData("item driver 84 kg at 1 m behind $0", "at PLACE")]
    [InlineData("item driver 84 kg at 1 m behind axle $0", "[high HIGH]")]
    [InlineData("item driver 84 kg at axle high $0", "[high HIGH]")]
    public void The_part_at_the_caret_is_the_active_one(string line, string part)
    {
        var workspace = new TestWorkspace("load l\n    on vehicle\n        " + line);
        var card = workspace.Service.Signature(TestWorkspace.Main, workspace.Marked.At, default)!;
        card.Label.Should().Be(Item);
        card.Parts.Select(one => Item[one.Start..one.End]).Should().Equal("NAME", "MASS", "[water|petrol|diesel|lpg|e85]", "at PLACE", "[high HIGH]", "[left LEFT]", "[right RIGHT]", "[on roof]");
        Item[card.Parts[card.Active!.Value].Start..card.Parts[card.Active.Value].End].Should().Be(part);
    }

    [Theory]
    [InlineData("? $0", "[for RESULT = VALUE]")]
    [InlineData("? for $0", "for RESULT")]
    [InlineData("? for tongue-ratio $0", "= VALUE")]
    [InlineData("? for tongue-ratio = 9 % $0", "[within LOW .. HIGH]")]
    [InlineData("? least $0", "least RESULT")]
    [InlineData("? most tongue-ratio $0", "[within LOW .. HIGH]")]
    public void A_question_takes_a_wish(string value, string part)
    {
        var workspace = new TestWorkspace("vehicle v\n    wheelbase " + value);
        var card = workspace.Service.Signature(TestWorkspace.Main, workspace.Marked.At, default)!;
        var active = card.Parts[card.Active!.Value];
        card.Label[active.Start..active.End].Should().Be(part);
    }

    [Theory]
    [InlineData("load $0", 0)]
    [InlineData("load autumn $0", 1)]
    [InlineData("load autumn like $0", 1)]
    [InlineData("load autumn \"A$0\"", 2)]
    public void An_opening_has_a_signature_too(string text, int active)
    {
        var workspace = new TestWorkspace(text);
        var card = workspace.Service.Signature(TestWorkspace.Main, workspace.Marked.At, default)!;
        card.Label.Should().Be("load NAME [like NAME] [\"TITLE\"]");
        card.Active.Should().Be(active);
    }

    [Theory]
    [InlineData("load l\n    on vehicle\n        it$0em x")]
    [InlineData("load l\n    on vehicle\n        item x # com$0ment")]
    [InlineData("load l\n    nonsense $0")]
    [InlineData("$0")]
    public void There_is_none_where_nothing_is_taken(string text)
    {
        var workspace = new TestWorkspace(text);
        workspace.Service.Signature(TestWorkspace.Main, workspace.Marked.At, default).Should().BeNull();
    }

    [Fact]
    public void Tokens_of_some_lines_are_those_of_the_whole_on_these_lines()
    {
        var workspace = new TestWorkspace("vehicle van\n    wheelbase 2.94 m\n    axle front\n        carries 1 kg\n\nrig r\n    vehicle van # x");
        var all = workspace.Service.MeaningTokens(TestWorkspace.Main, null, default);
        foreach (var (from, to) in new[] { (0, 0), (1, 3), (3, 5), (4, 4), (6, 99) })
        {
            workspace.Service.MeaningTokens(TestWorkspace.Main, new LineRange(new(from, 0), new(to, 0)), default).Should().Equal(all.Where(token => token.Line >= from && token.Line <= to));
        }
    }
}
