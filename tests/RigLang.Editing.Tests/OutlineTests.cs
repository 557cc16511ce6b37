using RigLang.Editing.Tests.Support;

namespace RigLang.Editing.Tests;

/// <summary>The outline, what folds, and the colours.</summary>
public class OutlineTests
{
    private const string Text = """
        # One
        # Two
        use "parts.rig"

        vehicle van "People carrier"
            wheelbase 2.94 m
            axle front
                carries 1195 kg
                # a word
            electric

        # about the trip
        trip saddle like other
            leg quarry "Quarry services"
                distance 5 km
            stop quarry

        vehicle
        nonsense here
        """;

    [Fact]
    public void Declarations_and_blocks_are_listed_by_name()
    {
        var outline = new TestWorkspace(Text).Service.Outline(TestWorkspace.Main, default);
        outline.Select(entry => (entry.Name, entry.Detail, entry.Sort)).Should().Equal(
            ("parts.rig", "use", OutlineSort.File),
            ("van", "vehicle “People carrier”", OutlineSort.Vehicle),
            ("saddle", "trip like other", OutlineSort.Trip),
            ("", "vehicle", OutlineSort.Vehicle));
        outline[1].Children.Select(entry => entry.Name).Should().Equal("axle front", "electric");
        outline[2].Children.Select(entry => (entry.Name, entry.Detail)).Should().Equal(("leg quarry", "Quarry services"), ("stop quarry", ""));
    }

    [Fact]
    public void A_name_lies_inside_its_entry_and_an_entry_inside_the_one_around_it()
    {
        foreach (var entry in new TestWorkspace(Text).Service.Outline(TestWorkspace.Main, default))
        {
            Inside(entry.NameRange, entry.Range);
            foreach (var child in entry.Children)
            {
                Inside(child.Range, entry.Range);
                Inside(child.NameRange, child.Range);
            }
        }
    }

    [Fact]
    public void Declarations_blocks_and_runs_of_comments_fold()
    {
        var folds = new TestWorkspace(Text).Service.Folds(TestWorkspace.Main, default);
        folds.Should().BeEquivalentTo([
            new FoldStretch(0, 1, IsComment: true),
            new FoldStretch(4, 9, IsComment: false),
            new FoldStretch(6, 7, IsComment: false),
            new FoldStretch(12, 15, IsComment: false),
            new FoldStretch(13, 14, IsComment: false),
            new FoldStretch(17, 18, IsComment: false),
        ]);
    }

    [Theory]
    [InlineData("vehicle van like other \"A van\" # old", "vehicle:Keyword van:DeclarationName! like:Joint other:Reference \"A van\":Text # old:Comment")]
    [InlineData("vehicle v\n    wheelbase 2.94 m ± 3 mm", "wheelbase:Keyword 2.94:Number m:Unit 3:Number mm:Unit")]
    [InlineData("vehicle v\n    body mpv", "body:Keyword mpv:Choice")]
    [InlineData("vehicle v\n    axle front", "axle:Keyword front:Key!")]
    [InlineData("vehicle v\n    wheelbas 2 m", "wheelbas:Unknown 2:Number m:Unit")]
    [InlineData("vehicle v\n    tank fuel 60 L petrol at 1 m behind front-axle", "tank:Keyword fuel:Key! 60:Number L:Unit petrol:Choice at:Joint 1:Number m:Unit behind:Joint front-axle:Key")]
    [InlineData("rig r\n    vehicle van", "vehicle:Keyword van:Reference")]
    [InlineData("rig r\n    expect tongue-ratio < 5 %", "expect:Keyword tongue-ratio:Reference <:Sign 5:Number %:Unit")]
    [InlineData("rig r\n    allow some-check because \"so\"", "allow:Keyword some-check:Reference because:Joint \"so\":Text")]
    [InlineData("rig r like q\n    without load autumn", "without:Keyword load:Keyword autumn:Key")]
    [InlineData("rig q\n    load autumn\n\nrig r like q\n    without load autumn", "without:Keyword load:Keyword autumn:Key")]
    [InlineData("vehicle v\n    note \"🚐\" # °", "note:Keyword \"🚐\":Text # °:Comment")]
    public void Stretches_are_coloured_by_what_they_mean(string text, string tokens)
    {
        var workspace = new TestWorkspace(text);
        var lines = text.Split('\n');
        var found = workspace.Service.MeaningTokens(TestWorkspace.Main, null, default).Where(token => token.Line == lines.Length - 1)
            .Select(token => $"{lines[token.Line].Substring(token.Character, token.Length)}:{token.Sort}{(token.IsDeclaration ? "!" : "")}");
        string.Join(' ', found).Should().Be(tokens);
    }

    private static void Inside(LineRange inner, LineRange outer)
    {
        inner.Start.Should().BeGreaterThanOrEqualTo(outer.Start);
        inner.End.Should().BeLessThanOrEqualTo(outer.End);
    }
}
