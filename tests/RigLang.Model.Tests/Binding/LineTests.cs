using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Model.Tests.Binding;

public sealed class LineTests
{
    [Theory]
    [InlineData("vehicle v\n    wheelbase 2.94 m", "wheelbase", 2.94)]
    [InlineData("vehicle v\n    gross-rating 10_400 lb", "gross-rating", 10_400 * 0.45359237)]
    [InlineData("vehicle v\n    d-value 10.4 kN", "d-value", 10_400)]
    [InlineData("trailer t\n    coupling 2-5/16 in", "coupling", 2.3125 * 0.0254)]
    [InlineData("trailer t\n    length 33 ft 4 in", "length", 400 * 0.0254)]
    [InlineData("trailer t\n    brake-ratio 50 %", "brake-ratio", 0.5)]
    [InlineData("trailer t\n    rolling 0.011", "rolling", 0.011)]
    [InlineData("rig r\n    speed 85 km/h", "speed", 85 / 3.6)]
    [InlineData("rig r\n    links 5", "links", 5)]
    public void A_quantity_is_read_in_SI(string text, string keyword, double expected)
    {
        var declaration = Reading.Only(text);

        Reading.Slugs(text).Should().BeEmpty();
        declaration.Block.Si(keyword).Should().BeApproximately(expected, expected * 1e-12);
    }

    [Fact]
    public void An_uncertainty_comes_along()
    {
        var mass = Reading.Only("trailer t\n    mass 1790 kg ± 15 kg").Block.Fact("mass").MeasureOf("value")!;

        mass.Value.Should().Be(1790);
        mass.HalfWidth.Should().Be(15);
    }

    [Theory]
    [InlineData("item gas 2 x 9 kg at 0.70 m behind coupling", 18, 0.70, "coupling")]
    [InlineData("item stores 90 kg at 1.60 m ahead of axle", 90, -1.60, "axle")]
    [InlineData("item children 35 kg + 30 kg at 2.35 m behind front-axle high 0.9 m", 65, 2.35, "front-axle")]
    [InlineData("item saws 28 kg at axle", 28, 0, "axle")]
    public void An_item_has_a_mass_and_a_place(string line, double mass, double offset, string point)
    {
        var text = $"load l\n    on trailer\n        {line}";
        var item = Reading.Only(text).Block.FindBlock(CargoFacts.Load.Block)!.Fact("item");

        Reading.Slugs(text).Should().BeEmpty();
        item.MeasureOf("mass")!.Value.Should().Be(mass);
        item.PositionOf("place")!.Offset.Should().BeApproximately(offset, 1e-12);
        item.PositionOf("place")!.Point.Should().Be(point);
    }

    [Fact]
    public void Phrases_may_come_in_any_order()
    {
        var text = "load l\n    on vehicle\n        item box 16 kg on roof high 1.9 m left 0.2 m at 1.5 m behind front-axle";
        var item = Reading.Only(text).Block.FindBlock(CargoFacts.Load.Block)!.Fact("item");

        Reading.Slugs(text).Should().BeEmpty();
        item.Values.Keys.Should().BeEquivalentTo("name", "mass", "place", "high", "left", "roof");
    }

    [Fact]
    public void Lines_with_two_quantities_keep_them_apart()
    {
        var text = "vehicle v\n    electric\n        charge-point 60 % 92 kW\n    combustion\n        torque-point 1600 rpm 850 lbf·ft\n        gear 1 4.50";
        var vehicle = Reading.Only(text).Block;

        Reading.Slugs(text).Should().BeEmpty();
        var point = vehicle.FindBlock(ElectricFacts.Block)!.Fact("charge-point");
        (point.MeasureOf("charge")!.Value, point.MeasureOf("power")!.Value).Should().Be((0.6, 92_000));
        vehicle.FindBlock(CombustionFacts.Block)!.Fact("gear").MeasureOf("ratio")!.Value.Should().Be(4.5);
    }

    [Fact]
    public void A_question_mark_is_a_line_without_a_value()
    {
        var fact = Reading.Only("vehicle v\n    yaw-inertia ?").Block.Fact("yaw-inertia");

        fact.Query.Should().NotBeNull();
        fact.MeasureOf("value").Should().BeNull();
    }

    [Fact]
    public void None_is_known_to_be_absent()
    {
        Reading.Only("hitch h\n    yaw-friction none").Block.Fact("yaw-friction").Value.Should().BeOfType<AbsentValue>();
    }

    [Theory]
    [InlineData("vehicle v\n    wheelbase", "value-missing")]
    [InlineData("vehicle v\n    wheelbase long", "wrong-form")]
    [InlineData("vehicle v\n    wheelbase 2.94", "unit-missing")]
    [InlineData("vehicle v\n    wheelbase 2.94 kg", "unit-of-something-else")]
    [InlineData("vehicle v\n    wheelbase 2.94 furlongz", "unit-unknown")]
    [InlineData("vehicle v\n    wheelbase 2.94 m long", "argument-left-over")]
    [InlineData("vehicle v\n    wheelbase 2.94 m and no more", "argument-left-over")]
    [InlineData("vehicle v\n    wheelbase ~2.94 m", "stray-text")]
    [InlineData("vehicle v\n    wheelbase about 2.94 m", "wrong-form")]
    [InlineData("vehicle v\n    wheelbase 2.94 m.", "name-malformed")]
    [InlineData("vehicle v\n    wheelbase 2.9O m", "unit-unknown")]
    [InlineData("practice p\n    limit 7 % .. 10 %", "wrong-form")]
    [InlineData("practice p\n    limit tongue-ratio 7 - 10 %", "wrong-form")]
    [InlineData("practice p\n    limit tongue-ratio 7 to 10 %", "range-with-hyphen")]
    [InlineData("practice p\n    limit tongue-ratio => 7 %", "bound-without-value")]
    [InlineData("load l\n    on vehicle\n        item bags 45 kg in boot", "value-missing")]
    [InlineData("load l\n    on vehicle\n        item big bags 45 kg at axle", "wrong-form")]
    [InlineData("load l\n    on vehicle\n        item bags -45 kg at axle", "must-be-positive")]
    [InlineData("load l\n    on vehicle\n        item bags 45 kg at 1 m ahead of rear axle", "wrong-form")]
    [InlineData("use \"a.rig\"\nlanguage 1", "language-not-first")]
    [InlineData("x", "nothing-open")]
    [InlineData("rgi r\n    speed 80 km/h", "unknown-kind")]
    [InlineData("load l\n    on trailer\n        item box 5 kg at -2 m behind axle", "must-be-positive")]
    [InlineData("vehicle v\n    wheelbase 0 m", "must-be-positive")]
    [InlineData("vehicle v\n    wheelbase -2.9 m", "must-be-positive")]
    [InlineData("vehicle v\n    wheelbase 294 m", "magnitude-unlikely")]
    [InlineData("trailer t\n    mass 2 ton", "unit-ambiguous")]
    [InlineData("vehicle v\n    d-value 1000 kg", "mass-or-force")]
    [InlineData("trip t\n    start-charge 9.5", "ratio-above-range")]
    [InlineData("vehicle v\n    drive sideways", "wrong-form")]
    [InlineData("load l\n    on trailer\n        item box 5 kg", "value-missing")]
    [InlineData("load l\n    on trailer\n        item box 5 kg at 2 m", "value-missing")]
    [InlineData("weighing w\n    date 2026-02-30", "moment-unreadable")]
    public void What_does_not_fit_is_reported_once(string text, string slug)
    {
        Reading.Slugs(text).Should().Equal(slug);
    }

    [Fact]
    public void A_forgotten_at_is_asked_for_and_the_place_marked_as_one()
    {
        var finding = Reading.Findings(Reading.File("load l\n    on trailer\n        item hay 18 kg 1.30 m ahead of axle")).Should().ContainSingle().Subject;

        finding.Check.Slug.Should().Be("value-missing");
        finding.Place.Text.Should().Be("1.30 m ahead of axle");
        finding.Message.Should().StartWith("`at` is missing before `1.30 m ahead of axle`");
        finding.Fixes.SelectMany(fix => fix.Edits).Should().ContainSingle().Which.NewText.Should().Be("at ");
    }

    [Theory]
    [InlineData("-2 m behind axle", "2 m ahead of axle")]
    [InlineData("-2.50 m ahead of axle", "2.50 m behind axle")]
    public void A_place_with_a_sign_counts_nowhere_and_can_be_turned(string typed, string turned)
    {
        var finding = Reading.Findings(Reading.File($"load l\n    on trailer\n        item box 5 kg at {typed}")).Should().ContainSingle().Subject;

        finding.Place.Text.Should().Be(typed);
        finding.Fixes.SelectMany(fix => fix.Edits).Select(edit => edit.NewText).Should().Contain(turned);
    }

    [Theory]
    [InlineData("vehicle v\n    axle front\n        pressure 27 bar", "0.8 bar to 9 bar")]
    [InlineData("vehicle v\n    wheelbase 294 m", "1.5 m to 8 m")]
    public void The_usual_range_has_no_digits_that_say_nothing(string text, string range)
    {
        Reading.Findings(Reading.File(text)).Single(finding => finding.Check.Slug == "magnitude-unlikely").Message.Should().Contain(range);
    }

    [Theory]
    [InlineData("vehicle v\n    wheelbase 0 m")]
    [InlineData("trip t\n    start-charge 9.5")]
    public void A_value_that_cannot_be_is_left_out_of_all_results(string text)
    {
        Reading.Only(text).Block.Facts.Should().ContainSingle().Which.IsComplete.Should().BeFalse();
    }
}
