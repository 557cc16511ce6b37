using RigLang.Editing.Tests.Support;

namespace RigLang.Editing.Tests;

/// <summary>What a person takes hold of in a text: stretches that widen by meaning, the same name elsewhere, names by some letters.</summary>
public class SelectionTests
{
    [Theory]
    [InlineData("vehicle van\n    wheelbase 2.$094 m ± 1 cm # plate", "|2.94|2.94 m|2.94 m ± 1 cm|wheelbase 2.94 m ± 1 cm|    wheelbase 2.94 m ± 1 cm # plate|vehicle van\n    wheelbase 2.94 m ± 1 cm # plate")]
    [InlineData("vehicle van\n    axle front\n        carries 1195 k$0g\n    axle rear", "|kg|1195 kg|carries 1195 kg|        carries 1195 kg|    axle front\n        carries 1195 kg|vehicle van\n    axle front\n        carries 1195 kg\n    axle rear")]
    [InlineData("rig r \"Coa$0st\"\n\nrig s", "|Coast|\"Coast\"|rig r \"Coast\"|rig r \"Coast\"\n\nrig s")]
    [InlineData("# one t$0wo\nrig r", "|# one two|# one two\nrig r")]
    [InlineData("", "")]
    public void A_selection_widens_by_meaning(string text, string stretches)
    {
        var workspace = new TestWorkspace(text.Contains("$0") ? text : text + "$0");
        var ranges = workspace.Service.SelectionRanges(TestWorkspace.Main, workspace.Marked.At, default);
        string.Join("|", ranges.Select(workspace.TextOf)).Should().Be(stretches);
    }

    [Theory]
    [InlineData("vehicle v$0an\nrig a\n    vehicle van\nrig b\n    vehicle van\ntrailer van", "0 made, 2, 4")]
    [InlineData("trip x\n    leg quarry\n    stop quar$0ry\ntrip y\n    leg quarry", "1 made, 2")]
    [InlineData("vehicle v\n    wheel$0base 2 m", "")]
    public void The_same_name_is_shown_wherever_it_stands(string text, string lines)
    {
        var workspace = new TestWorkspace(text);
        string.Join(", ", workspace.Service.Highlights(TestWorkspace.Main, workspace.Marked.At, default).Select(found => $"{found.Range.Start.Line}{(found.IsMade ? " made" : "")}")).Should().Be(lines);
    }

    [Theory]
    [InlineData("load a\nload b like a\nrig r\n    load $0b", 0)]
    [InlineData("load a\nload b like a\nrig r\n    load $0a", 0)]
    [InlineData("trailer t\n    tank fre$0sh 1 L water at axle", 0)]
    public void Behind_a_name_is_what_it_is_made_after(string text, int line)
    {
        var workspace = new TestWorkspace(text);
        workspace.Service.TypeDefinition(TestWorkspace.Main, workspace.Marked.At, default).Should().ContainSingle().Which.Range.Start.Line.Should().Be(line);
    }

    [Fact]
    public void A_place_and_its_stops_are_typed_over_together_unless_another_file_means_them()
    {
        const string Trip = "trip x\n    leg qua$0rry\n    stop quarry";
        var workspace = new TestWorkspace(Trip);
        workspace.Service.LinkedPlaces(TestWorkspace.Main, workspace.Marked.At, default).Select(workspace.TextOf).Should().Equal("quarry", "quarry");
        workspace = new TestWorkspace(Trip, ("heir.rig", "use \"main.rig\"\ntrip y like x\n    without stop quarry"));
        workspace.Service.LinkedPlaces(TestWorkspace.Main, workspace.Marked.At, default).Should().BeEmpty();
        workspace = new TestWorkspace("vehicle v$0an\nrig r\n    vehicle van");
        workspace.Service.LinkedPlaces(TestWorkspace.Main, workspace.Marked.At, default).Should().BeEmpty("other names are renamed");
    }

    [Theory]
    [InlineData("coast", "rig coast, rig coast-two")]
    [InlineData("cst", "rig coast, rig coast-two")]
    [InlineData("VAN", "vehicle van, load caravan")]
    [InlineData("front", "axle front of van")]
    [InlineData("zz", "")]
    public void Names_of_all_files_are_found_by_some_letters_the_closest_first(string query, string names)
    {
        var workspace = new TestWorkspace("vehicle van\n    axle front", ("rigs.rig", "use \"main.rig\"\nrig coast-two\nrig coast\nload caravan"));
        var found = workspace.Service.NamesLike(query, default).Select(name => name.Sort == OutlineSort.Block ? $"{name.Name} of {name.Container}" : $"{name.Sort.ToString().ToLowerInvariant()} {name.Name}");
        string.Join(", ", found).Should().Be(names);
    }
}
