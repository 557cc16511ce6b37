using RigLang.Model.Facts;
using RigLang.Model.Linking;

namespace RigLang.Model.Tests.Linking;

public sealed class LikeTests
{
    private const string Full = """
        load full
            on vehicle
                item driver 75 kg at 1.4 m behind front-axle
            on trailer
                item bicycles 32 kg at 2.9 m behind axle
                item stores 90 kg at 1.6 m ahead of axle

        """;

    private static Declaration Second(string text) => Reading.File(Full + text).Declarations[1];

    private static IEnumerable<string> TrailerItems(Declaration load) => load.Block.FindBlock(CargoFacts.Load.Block, "trailer")!.Facts.Select(fact => fact.Title);

    [Fact]
    public void It_has_every_line_of_the_other()
    {
        var copy = Second("load light like full\n");

        TrailerItems(copy).Should().Equal("item bicycles", "item stores");
        copy.Block.FindBlock(CargoFacts.Load.Block, "vehicle")!.Facts.Should().ContainSingle();
    }

    [Fact]
    public void A_line_with_the_same_key_takes_the_others_place()
    {
        var light = Second("load light like full\n    on trailer\n        item bicycles 16 kg at 2.9 m behind axle\n");

        TrailerItems(light).Should().Equal("item bicycles", "item stores");
        light.Block.FindBlock(CargoFacts.Load.Block, "trailer")!.Facts[0].MeasureOf("mass")!.Value.Should().Be(16);
    }

    [Fact]
    public void A_new_key_adds()
    {
        TrailerItems(Second("load more like full\n    on trailer\n        item awning 60 kg at axle\n")).Should().Equal("item bicycles", "item stores", "item awning");
    }

    [Fact]
    public void Without_takes_away()
    {
        TrailerItems(Second("load light like full\n    on trailer\n        without item bicycles\n")).Should().Equal("item stores");
    }

    [Fact]
    public void Without_takes_a_whole_block_away()
    {
        Second("load light like full\n    without on trailer\n").Block.AllBlocks(CargoFacts.Load.Block).Select(block => block.Key).Should().Equal("vehicle");
    }

    [Theory]
    [InlineData("load light like full\n    on trailer\n        without item bycicles\n", "without-finds-nothing")]
    [InlineData("load light\n    on trailer\n        without item bicycles\n", "without-finds-nothing")]
    [InlineData("load light like full\n    on trailer\n        item bicycle 16 kg at axle\n", "adds-beside-inherited")]
    [InlineData("load light like ful\n", "name-unknown")]
    [InlineData("load light like light\n", "like-in-circle")]
    public void Slips_are_reported(string text, string slug)
    {
        Reading.Slugs(Full + text).Should().Equal(slug);
    }

    [Fact]
    public void A_circle_is_reported_and_ends()
    {
        var file = Reading.File("load a like b\n\nload b like c\n\nload c like a\n");

        Reading.Findings(file).Select(finding => finding.Check.Slug).Should().Contain("like-in-circle").And.OnlyContain(slug => slug == "like-in-circle");
        file.Declarations.Should().HaveCount(3);
    }

    [Fact]
    public void A_chain_of_eight_is_followed_and_a_longer_one_reported()
    {
        string Chain(int length) => "load a0\n    on vehicle\n        item driver 75 kg at front-axle\n" + string.Concat(Enumerable.Range(1, length).Select(index => $"\nload a{index} like a{index - 1}\n"));

        var eight = Reading.File(Chain(8));
        eight.Declarations[8].Block.Blocks.Should().ContainSingle();
        Reading.Findings(eight).Should().BeEmpty();

        Reading.Slugs(Chain(9)).Should().Equal("like-too-deep");
    }

    [Fact]
    public void A_chain_of_thousands_written_last_first_ends()
    {
        var text = string.Concat(Enumerable.Range(1, 5000).Reverse().Select(index => $"load a{index} like a{index - 1}\n\n")) + "load a0\n";

        Reading.Slugs(text).Should().Contain("like-too-deep");
    }

    [Fact]
    public void A_section_of_its_own_replaces_the_inherited_ones()
    {
        var file = Reading.File("trip a\n    leg x\n        section 10 km at 1 %\n        section 5 km at 2 %\n\ntrip b like a\n    leg x\n        section 9 km at 1 %\n");

        file.Declarations[1].Block.Blocks[0].All(LegFacts.Journey.Section).Should().ContainSingle();
    }

    [Fact]
    public void Aboard_nothing_empties_the_inherited_block()
    {
        var file = Reading.File("vehicle a\n    aboard\n        item driver 75 kg at front-axle\n\nvehicle b like a\n    aboard nothing\n");

        file.Declarations[1].Block.FindBlock(CargoFacts.AboardVehicle.Block)!.Facts.Should().BeEmpty();
    }
}
