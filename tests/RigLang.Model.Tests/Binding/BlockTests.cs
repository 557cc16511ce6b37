using RigLang.Model.Facts;

namespace RigLang.Model.Tests.Binding;

public sealed class BlockTests
{
    [Theory]
    [InlineData("vehicle v\n    wheelbse 2.94 m", "unknown-keyword")]
    [InlineData("vehicle v\n    gvwr 2950 kg", "unknown-keyword")]
    [InlineData("vehicle v\n    axle-rating 1350 kg", "keyword-elsewhere")]
    [InlineData("vehicle v\n    axle front\n        wheelbase 2.94 m", "keyword-elsewhere")]
    [InlineData("vehicle v\n    restoration 50 %", "keyword-elsewhere")]
    [InlineData("vehicle v\n    wheelbase 2.94 m\n    wheelbase 2.92 m", "said-twice")]
    [InlineData("vehicle v\n    wheelbase 2.94 m\n        overhang 1.09 m", "lines-under-a-fact")]
    [InlineData("    wheelbase 2.94 m", "nothing-open")]
    public void A_line_in_the_wrong_place_is_reported_once(string text, string slug)
    {
        Reading.Slugs(text).Should().Equal(slug);
    }

    [Theory]
    [InlineData("vehicle v\n    gross weight 2950 kg", "`gross weight` is called `gross-rating` here", "vehicle v\n    gross-rating 2950 kg")]
    [InlineData("vehicle v\n    tow rating 2300 kg", "`tow rating` is called `towing-rating` here", "vehicle v\n    towing-rating 2300 kg")]
    [InlineData("trailer t\n    tare 1200 kg", "`tare` is called `mass` here", "trailer t\n    mass 1200 kg")]
    [InlineData("vehicle v\n    front axle rating 1200 kg", "`front axle rating` is called `axle-rating` and stands under `axle`", null)]
    [InlineData("vehicle v\n    gawr 1200 kg", "`gawr` is called `axle-rating` and stands under `axle`", null)]
    public void Words_of_the_trade_are_understood_and_told_by_our_keyword(string text, string said, string? mended)
    {
        var finding = Reading.Findings(Reading.File(text)).Should().ContainSingle().Subject;
        finding.Message.Should().StartWith(said);
        if (mended is null)
        {
            finding.Fixes.Should().BeEmpty("the line has to move as well");
        }
        else
        {
            var edit = finding.Fixes.Should().ContainSingle().Subject.Edits.Should().ContainSingle().Subject;
            text.Replace(edit.Place.Text, edit.NewText, StringComparison.Ordinal).Should().Be(mended);
        }
    }

    [Fact]
    public void A_word_from_elsewhere_gets_our_keyword_as_a_fix()
    {
        var finding = Reading.Findings(Reading.File("vehicle v\n    gvwr 2950 kg")).Single();

        finding.Message.Should().Contain("`gross-rating`");
        finding.Fixes.Should().ContainSingle().Which.Edits.Single().NewText.Should().Be("gross-rating");
    }

    [Fact]
    public void The_first_of_two_lines_counts_and_the_second_names_it()
    {
        var file = Reading.File("vehicle v\n    wheelbase 2.94 m\n    wheelbase 2.92 m");

        file.Declarations[0].Block.Si("wheelbase").Should().Be(2.94);
        Reading.Findings(file).Single().Related.Single().Place.Line.Should().Be(1);
    }

    [Fact]
    public void Keys_tell_repeated_lines_apart()
    {
        var text = "load l\n    on vehicle\n        item driver 75 kg at 1.4 m behind front-axle\n        item partner 66 kg at 1.4 m behind front-axle";

        Reading.Slugs(text).Should().BeEmpty();
        Reading.Only(text).Block.FindBlock(CargoFacts.Load.Block)!.All(CargoFacts.Load.Item).Select(item => item.Key).Should().Equal("driver", "partner");
    }

    [Fact]
    public void Legs_and_stops_keep_their_order()
    {
        var trip = Reading.Only("trip t\n    rig r\n    start home\n    leg a\n        distance 10 km\n    stop a\n        pause 5 min\n    leg b\n        distance 20 km").Block;

        trip.Blocks.Select(block => block.Opener!.Title).Should().Equal("leg a", "stop a", "leg b");
    }

    [Fact]
    public void The_same_line_twice_with_another_key_text_for_expect_is_two_tests()
    {
        Reading.Slugs("rig r\n    expect damping > 0.1 at 90 km/h\n    expect damping > 0.1 at 100 km/h").Should().BeEmpty();
    }
}
