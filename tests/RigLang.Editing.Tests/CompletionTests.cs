using RigLang.Editing.Tests.Support;

namespace RigLang.Editing.Tests;

/// <summary>What is offered at a caret, most of it on lines that are half written.</summary>
public class CompletionTests
{
    private const string Parts = """
        vehicle van "Electric people carrier"
            wheelbase 2.94 m
            tank fuel 60 L petrol at 1 m behind front-axle
            axle front
                carries 1195 kg
            axle rear
                carries 1225 kg

        trailer wren
            mass 1790 kg
            tank fresh 110 L water at 0.35 m ahead of axle
            axle lead
            axle trail

        load autumn
            on trailer
                item bicycles 32 kg at 2.9 m behind axle
                fill fresh 50 %

        rig coast "People carrier and caravan"
            vehicle van
            trailer wren
            load autumn
            speed 85 km/h
        """;

    [Theory]
    [InlineData("$0", new[] { "vehicle", "trailer", "rig", "trip", "use", "language" })]
    [InlineData("ve$0", new[] { "vehicle" })]
    [InlineData("\n$0", new[] { "vehicle", "vehicle …", "use" })]
    [InlineData("rig x $0", new[] { "like" })]
    [InlineData("USE\nrig x like $0", new[] { "coast" })]
    [InlineData("vehicle v\n    $0", new[] { "wheelbase", "overhang", "axle", "aboard", "expect", "allow", "note" })]
    [InlineData("vehicle v\n    wheelb$0", new[] { "wheelbase" })]
    [InlineData("vehicle v\n    axle front\n        $0", new[] { "carries", "axle-rating", "tyres" })]
    [InlineData("vehicle v\n    axle front\n        carries 5 kg\n    $0\n    axle rear", new[] { "gross-rating", "axle" })]
    [InlineData("vehicle v\n    wheelbase 2.94 $0", new[] { "m", "mm", "in", "ft" })]
    [InlineData("vehicle v\n    wheelbase 2.94m ± 3 $0", new[] { "m", "mm" })]
    [InlineData("vehicle v\n    wheelbase 2.94$0", new[] { "m", "mm" })]
    [InlineData("vehicle v\n    body $0", new[] { "saloon", "mpv", "pick-up" })]
    [InlineData("vehicle v\n    abs $0", new[] { "yes", "no" })]
    [InlineData("vehicle v\n    yaw-inertia $0", new[] { "?" })]
    [InlineData("vehicle v\n    mount x $0", new[] { "at" })]
    [InlineData("vehicle v\n    mount x at 3 in $0", new[] { "behind", "ahead of" })]
    [InlineData("vehicle v\n    mount x at 3 $0", new[] { "in", "m" })]
    [InlineData("vehicle v\n    mount x at 3 in ahead of $0", new[] { "pin", "ball", "rear-axle" })]
    [InlineData("trailer t\n    axle lead\n    tank x 5 L water at $0", new[] { "axle", "coupling", "body", "lead" })]
    [InlineData("load x\n    on $0", new[] { "vehicle", "trailer" })]
    [InlineData("load x\n    on vehicle\n        item y 5 kg at 2 m behind $0", new[] { "front-axle", "rear-axle" })]
    [InlineData("load x\n    on vehicle\n        item y 5 kg at 2 m behind front-axle $0", new[] { "high", "left", "on" })]
    [InlineData("load x\n    on vehicle\n        item y 5 kg at 2 m behind front-axle high 1 m on $0", new[] { "roof" })]
    [InlineData("USE\nload x\n    on trailer\n        fill $0", new[] { "fresh", "fuel" })]
    [InlineData("USE\nload x like autumn\n    on trailer\n        without $0", new[] { "item bicycles", "fill fresh" })]
    [InlineData("USE\nrig x\n    vehicle $0", new[] { "van" })]
    [InlineData("USE\nrig x\n    practice $0", new[] { "common-na", "common-eu" })]
    [InlineData("USE\nrig x\n    expect $0", new[] { "front-axle-load", "tongue-ratio" })]
    [InlineData("USE\nrig x\n    expect tongue-ratio < 5 $0", new[] { "%" })]
    [InlineData("USE\nrig x\n    expect front-axle-load 1 kg .. 5 $0", new[] { "kg", "lb" })]
    [InlineData("USE\nrig x\n    restoration ? $0", new[] { "for", "least", "most" })]
    [InlineData("USE\nrig x\n    restoration ? for $0", new[] { "front-axle-load" })]
    [InlineData("USE\nrig x\n    restoration ? for front-axle-load = 5 $0", new[] { "kg", "within" })]
    [InlineData("USE\nweighing w\n    rig coast\n    pass solo\n        scale $0", new[] { "front", "rear", "lead", "trailer", "tongue" })]
    [InlineData("USE\nweighing w\n    rig coast\n    pass solo\n        scale front $0", new[] { "left", "rear" })]
    [InlineData("USE\nweighing w\n    rig coast\n    pass solo\n        absent item $0", new[] { "bicycles" })]
    [InlineData("USE\nweighing w\n    rig coast\n    pass $0", new[] { "solo", "slack", "tight" })]
    [InlineData("trip t\n    leg a\n    leg b\n    stop $0", new[] { "b", "a" })]
    [InlineData("trip t\n    leg a\n        expect $0", new[] { "energy-left" })]
    [InlineData("trip t\n    leg a\n        wind 12 km/h $0", new[] { "head", "from" })]
    [InlineData("trip t\n    leg a\n    stop a\n        price 0.6 $0", new[] { "EUR/kWh", "EUR/L" })]
    [InlineData("practice p\n    assume $0", new[] { "friction", "yaw-inertia" })]
    [InlineData("practice p\n    assume reaction-time 2 $0", new[] { "s" })]
    [InlineData("practice p\n    limit damping > 0.1 at 100 $0", new[] { "km/h", "mph" })]
    [InlineData("use \"$0\"", new[] { "parts.rig", "trips/t.rig" })]
    [InlineData("use \"trips/$0", new[] { "trips/t.rig" })]
    public void What_fits_is_offered(string text, string[] labels) => Labels(text).Should().Contain(labels);

    [Theory]
    [InlineData("vehicle v\n    $0", new[] { "carries", "vehicle", "without" })]
    [InlineData("vehicle v\n    wheelbase 2 m\n    $0", new[] { "wheelbase" })]
    [InlineData("vehicle v\n    wheelbase 2.94 $0", new[] { "kg", "wheelbase" })]
    [InlineData("vehicle v\n    axle front\n        $0", new[] { "wheelbase", "behind-coupling" })]
    [InlineData("vehicle v # a van $0", new[] { "like" })]
    [InlineData("rig x\n    note \"front $0", new[] { "note" })]
    [InlineData("load x\n    on vehicle\n        item y 5 kg at 2 m behind $0", new[] { "coupling", "axle" })]
    [InlineData("USE\nrig x\n    vehicle $0", new[] { "wren", "coast" })]
    [InlineData("use \"parts.rig\"\nuse \"$0\"", new[] { "parts.rig", "main.rig" })]
    public void What_does_not_fit_is_not_offered(string text, string[] labels) => Labels(text).Should().NotIntersectWith(labels);

    [Fact]
    public void Facts_wanted_for_the_verdict_come_first_and_other_words_last()
    {
        var labels = Labels("vehicle v\n    $0");
        labels.IndexOf("wheelbase").Should().BeLessThan(labels.IndexOf("cg-height"));
        labels.IndexOf("cg-height").Should().BeLessThan(labels.IndexOf("note"));
        labels.IndexOf("note").Should().BeLessThan(labels.IndexOf("gvwr"));
    }

    [Theory]
    [InlineData("vehicle v\n    $0", "gvwr", "gross-rating")]
    [InlineData("vehicle v\n    $0", "noseweight", "tongue-rating")]
    [InlineData("vehicle v\n    axle front\n        $0", "gawr", "axle-rating")]
    public void Another_word_for_a_fact_writes_its_keyword(string text, string word, string keyword)
    {
        var entry = Entries(text).Single(entry => entry.Label == word);
        entry.Edit.NewText.Trim().Should().Be(keyword);
        entry.Detail.Should().Contain(keyword);
    }

    [Fact]
    public void A_keyword_brings_its_value_into_the_column_of_its_neighbours()
    {
        var workspace = new TestWorkspace("vehicle v\n    wheelbase               2.94 m\n    gr$0");
        var entry = workspace.Service.Complete(TestWorkspace.Main, workspace.Marked.At, default).Single(entry => entry.Label == "gross-rating");
        TestWorkspace.Apply(workspace.Marked.Text, [entry.Edit]).Should().Be("vehicle v\n    wheelbase               2.94 m\n    gross-rating            ");
    }

    [Fact]
    public void Completing_in_the_middle_of_a_word_replaces_all_of_it()
    {
        var workspace = new TestWorkspace("vehicle v\n    wheel$0bas 2.94 m");
        var entry = workspace.Service.Complete(TestWorkspace.Main, workspace.Marked.At, default).Single(entry => entry.Label == "wheelbase");
        TestWorkspace.Apply(workspace.Marked.Text, [entry.Edit]).Should().Be("vehicle v\n    wheelbase 2.94 m");
    }

    [Fact]
    public void A_unit_behind_a_glued_number_gets_a_blank()
    {
        var workspace = new TestWorkspace("vehicle v\n    wheelbase 2.94$0");
        var entry = workspace.Service.Complete(TestWorkspace.Main, workspace.Marked.At, default).Single(entry => entry.Label == "m");
        TestWorkspace.Apply(workspace.Marked.Text, [entry.Edit]).Should().EndWith("2.94 m");
    }

    [Fact]
    public void The_units_that_the_file_uses_come_first() =>
        Labels("vehicle v\n    overhang 41 in\n    wheelbase 157 $0")[0].Should().Be("in");

    [Fact]
    public void A_check_that_has_something_to_say_here_comes_first()
    {
        var entries = Entries("vehicle v\n    wheelbase 29 m\n    allow $0");
        entries[0].Label.Should().Be("magnitude-unlikely");
        entries[0].Edit.NewText.Should().Be("magnitude-unlikely because \"$1\"");
        entries[0].IsSnippet.Should().BeTrue();
    }

    [Fact]
    public void Inherited_lines_are_offered_with_what_they_say_now()
    {
        var entry = Entries("USE\nrig x like coast\n    $0").Single(entry => entry.Label == "speed");
        entry.Detail.Should().Be("inherited: 85 km/h");
    }

    [Fact]
    public void A_first_vehicle_has_places_for_its_values_and_no_values()
    {
        var entry = Entries("$0").Single(entry => entry.Label == "vehicle …");
        entry.IsSnippet.Should().BeTrue();
        entry.Edit.NewText.Should().Contain("    wheelbase               $").And.Contain("        carries             $").And.NotMatchRegex(@"\d (m|kg)\b");
    }

    [Fact]
    public void A_first_rig_offers_the_parts_that_are_there() =>
        Entries("USE\n$0").Single(entry => entry.Label == "rig …").Edit.NewText.Should().Contain("|van|").And.Contain("|wren|");

    private static List<string> Labels(string text) => [.. Entries(text).Select(entry => entry.Label)];

    private static List<CompletionEntry> Entries(string text)
    {
        var workspace = new TestWorkspace(text.Replace("USE", "use \"parts.rig\"", StringComparison.Ordinal), ("parts.rig", Parts), ("trips/t.rig", "trip t"));
        return [.. workspace.Service.Complete(TestWorkspace.Main, workspace.Marked.At, default).OrderBy(entry => entry.SortKey, StringComparer.Ordinal)];
    }
}
