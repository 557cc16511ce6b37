using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;

namespace RigLang.Editing.Tests;

/// <summary>From names to what they stand for, over files.</summary>
public class NavigationTests
{
    private const string Parts = """
        vehicle van
            tank fuel 60 L petrol at 1 m behind front-axle
            axle front
            axle rear
            aboard
                fill fuel 90 %

        trailer wren
            tank fresh 110 L water at 0.35 m ahead of axle
            axle lead
            axle trail

        load autumn
            on vehicle
                item driver 84 kg at 1 m behind front-axle
            on trailer
                item bicycles 32 kg at 2.9 m behind trail
                fill fresh 50 %

        load quick like autumn
            on trailer
                without item bicycles
        """;

    private const string Rigs = """
        use "parts.rig"

        rig coast
            vehicle van
            trailer wren
            load autumn
            practice common-na

        rig coast-two like coast
            load quick
        """;

    [Theory]
    [InlineData("use \"parts$0.rig\"", "parts.rig:1")]
    [InlineData("use \"rigs.rig\"\nrig x like co$0ast", "rigs.rig:3 coast")]
    [InlineData("use \"parts.rig\"\nrig x\n    vehicle v$0an", "parts.rig:1 van")]
    [InlineData("use \"parts.rig\"\nrig x\n    vehicle van$0", "parts.rig:1 van")]
    [InlineData("use \"rigs.rig\"\ntrip x\n    rig coast$0", "rigs.rig:3 coast")]
    [InlineData("use \"rigs.rig\"\nweighing x\n    rig coast\n    pass solo\n        scale front rea$0r 5 kg", "parts.rig:4 rear")]
    [InlineData("use \"rigs.rig\"\nweighing x\n    rig coast\n    pass solo\n        arch fron$0t 5 m", "parts.rig:3 front")]
    [InlineData("use \"rigs.rig\"\nweighing x\n    rig coast\n    pass solo\n        absent item dri$0ver", "parts.rig:15 driver")]
    [InlineData("trip x\n    leg quarry\n    stop qua$0rry", "main.rig:2 quarry")]
    [InlineData("vehicle va$0n", "main.rig:1 van")]
    [InlineData("use \"parts.rig\"\nload x like autumn\n    on trailer\n        without item bicy$0cles", "parts.rig:17 bicycles")]
    [InlineData("vehicle v\n    wheel$0base 2 m", "")]
    [InlineData("rig x\n    practice common-n$0a", "")]
    [InlineData("rig x\n    vehicle nob$0ody", "")]
    public void A_name_leads_to_where_it_is_made(string text, string place)
    {
        var workspace = Open(text);
        var found = workspace.Service.Definition(TestWorkspace.Main, workspace.Marked.At, default).Select(at => Words(workspace, at));
        string.Join("; ", found).Should().Be(place);
    }

    [Theory]
    [InlineData("parts.rig", "fill fresh 50 %", "fresh", "parts.rig:9 fresh")]
    [InlineData("parts.rig", "behind trail", "trail", "parts.rig:11 trail")]
    [InlineData("parts.rig", "fill fuel 90 %", "fuel", "parts.rig:2 fuel")]
    [InlineData("parts.rig", "without item bicycles", "bicycles", "parts.rig:17 bicycles")]
    public void A_load_finds_tanks_and_axles_by_the_rigs_that_name_it(string file, string line, string name, string place)
    {
        var workspace = Open("rig unrelated");
        var lines = Parts.Split('\n');
        var number = Array.FindIndex(lines, text => text.Contains(line));
        var at = new Syntax.LinePosition(number, lines[number].LastIndexOf(name, StringComparison.Ordinal));
        workspace.Service.Definition(new FileId("/rigs/" + file), at, default).Select(found => Words(workspace, found)).Should().Equal(place);
    }

    [Fact]
    public void References_are_found_in_files_that_are_not_open()
    {
        var workspace = Open("use \"parts.rig\"\nrig here\n    vehicle v$0an");
        var places = workspace.Service.References(TestWorkspace.Main, workspace.Marked.At, withDeclaration: true, default).Select(at => Words(workspace, at));
        places.Should().BeEquivalentTo("main.rig:3 van", "parts.rig:1 van", "rigs.rig:4 van");
        workspace.Service.References(TestWorkspace.Main, workspace.Marked.At, withDeclaration: false, default).Select(at => Words(workspace, at))
            .Should().BeEquivalentTo("main.rig:3 van", "rigs.rig:4 van");
    }

    [Fact]
    public void An_item_and_the_line_that_takes_it_away_are_the_same_name()
    {
        var workspace = Open("use \"parts.rig\"\nload mine like autumn\n    on trailer\n        item bicyc$0les 16 kg at 2.9 m behind axle");
        var places = workspace.Service.References(TestWorkspace.Main, workspace.Marked.At, withDeclaration: true, default).Select(at => Words(workspace, at));
        places.Should().BeEquivalentTo("main.rig:4 bicycles", "parts.rig:17 bicycles", "parts.rig:22 bicycles");
    }

    [Fact]
    public void Two_vehicles_of_one_name_in_two_files_are_two_names()
    {
        var workspace = new TestWorkspace("vehicle v$0an\nrig x\n    vehicle van", ("other.rig", "vehicle van\nrig y\n    vehicle van"));
        workspace.Service.References(TestWorkspace.Main, workspace.Marked.At, withDeclaration: true, default).Should().OnlyContain(place => place.File == TestWorkspace.Main).And.HaveCount(2);
    }

    private static TestWorkspace Open(string main) => new(main, ("parts.rig", Parts), ("rigs.rig", Rigs));

    /// <summary>"parts.rig:4 rear": the file, the line from 1, and the text there.</summary>
    private static string Words(TestWorkspace workspace, FilePlace place)
    {
        var text = place.File.Name switch { "parts.rig" => Parts, "rigs.rig" => Rigs, _ => workspace.Marked.Text };
        var line = text.Split('\n')[place.Range.Start.Line];
        return $"{place.File.Name}:{place.Range.Start.Line + 1} {line[place.Range.Start.Character..place.Range.End.Character]}".TrimEnd();
    }
}
