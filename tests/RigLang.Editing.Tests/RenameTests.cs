using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;

namespace RigLang.Editing.Tests;

/// <summary>Names get another spelling over files, and nothing changes what it means.</summary>
public class RenameTests
{
    private const string Parts = """
        vehicle van
            axle front
            axle rear

        trailer wren
            tank fresh 110 L water at 0.35 m ahead of axle
            axle lead
            axle trail

        load autumn
            on trailer
                item bicycles 32 kg at 2.9 m behind trail
                fill fresh 50 %
        """;

    private const string Rigs = """
        use "parts.rig"

        rig coast
            vehicle van
            trailer wren
            load autumn
            practice common-na

        rig bare like coast
            without load autumn

        weighing spring
            rig coast
            pass coupled
                scale trail 700 kg
                scale lead trail 1400 kg
                absent item bicycles
        """;

    [Theory]
    [InlineData("use \"parts.rig\"\nrig x\n    vehicle v$0an", "bus", "main.rig:3, parts.rig:1, rigs.rig:4")]
    [InlineData("use \"parts.rig\"\nload mine like aut$0umn", "winter", "main.rig:2, parts.rig:10, rigs.rig:10, rigs.rig:6")]
    [InlineData("use \"parts.rig\"\nload mine like autumn\n    on trailer\n        item bi$0cycles 1 kg at axle", "boats", "main.rig:4, parts.rig:12, rigs.rig:17")]
    [InlineData("use \"parts.rig\"\ntrailer mine like wren\n    axle tr$0ail", "back", "main.rig:3, parts.rig:12, parts.rig:8, rigs.rig:15, rigs.rig:16")]
    [InlineData("trip x\n    leg qua$0rry\n    stop quarry\n\ntrip y like x\n    without stop quarry", "mill", "main.rig:2, main.rig:3, main.rig:6")]
    [InlineData("load crêpe$0rie\nrig x\n    load crêperie", "café", "main.rig:1, main.rig:3")]
    public void Every_place_of_the_name_is_written_anew_and_no_other(string text, string newName, string lines)
    {
        var workspace = Open(text);
        var answer = workspace.Service.Rename(TestWorkspace.Main, workspace.Marked.At, newName, default);

        answer.Refusal.Should().BeNull();
        string.Join(", ", answer.Edits.Select(edit => $"{edit.Place.File.Name}:{edit.Place.Range.Start.Line + 1}").Order(StringComparer.Ordinal)).Should().Be(lines);
        answer.Edits.Should().OnlyContain(edit => edit.NewText == newName);
        var before = Findings(workspace);
        foreach (var file in answer.Edits.GroupBy(edit => edit.Place.File))
        {
            workspace.Workspace.Open(file.Key, TestWorkspace.Apply(Text(workspace, file.Key), file.Select(edit => new TextReplacement(edit.Place.Range, edit.NewText))));
        }

        Findings(workspace).Should().Equal(before, "a rename changes no meaning");
    }

    [Fact]
    public void A_tank_that_a_load_fills_in_either_of_two_trailers_is_renamed_in_both()
    {
        var workspace = new TestWorkspace("""
            trailer one
                tank fre$0sh 10 L water at axle
            trailer two
                tank fresh 20 L water at axle
            load l
                on trailer
                    fill fresh 50 %
            rig a
                trailer one
                load l
            rig b
                trailer two
                load l
            trailer three
                tank fresh 5 L water at axle
            """);
        workspace.Service.Rename(TestWorkspace.Main, workspace.Marked.At, "clean", default).Edits.Select(edit => edit.Place.Range.Start.Line).Should().BeEquivalentTo([1, 3, 6]);
    }

    [Theory]
    [InlineData("vehicle v$0an", "Van", "no name")]
    [InlineData("vehicle v$0an", "", "no name")]
    [InlineData("vehicle v$0an", "2-vans", "no name")]
    [InlineData("vehicle v$0an\nvehicle bus", "bus", "another vehicle `bus` (line 2)")]
    [InlineData("use \"parts.rig\"\nvehicle b$0us", "van", "another vehicle `van` (parts.rig:1)")]
    [InlineData("trip x\n    leg qua$0rry\n    leg mill", "mill", "name of another place in trip x (line 3)")]
    [InlineData("trailer t\n    axle le$0ad", "coupling", "meaning of its own")]
    [InlineData("vehicle v\n    axle fro$0nt", "first", "always called `front` and `rear`")]
    [InlineData("rig r\n    practice common-n$0a", "mine", "built in")]
    [InlineData("vehicle v\n    wheel$0base 2 m", "x", "No name stands here")]
    [InlineData("rig r\n    vehicle nob$0ody", "x", "No name stands here")]
    [InlineData("use \"par$0ts.rig\"", "x", "No name stands here")]
    public void A_rename_that_would_change_a_meaning_is_refused(string text, string newName, string why)
    {
        var workspace = Open(text);
        var answer = workspace.Service.Rename(TestWorkspace.Main, workspace.Marked.At, newName, default);
        answer.Edits.Should().BeEmpty();
        answer.Refusal.Should().Contain(why);
    }

    [Fact]
    public void A_name_taken_where_the_file_is_used_is_refused_too()
    {
        var workspace = new TestWorkspace("vehicle v$0an", ("other.rig", "use \"main.rig\"\nvehicle bus"));
        workspace.Service.Rename(TestWorkspace.Main, workspace.Marked.At, "bus", default).Refusal.Should().Contain("another vehicle `bus` (other.rig:2)");
    }

    [Theory]
    [InlineData("vehicle v$0an", "van", "")]
    [InlineData("rig r\n    practice common-n$0a", "common-na", "built in")]
    public void What_would_be_renamed_is_told_beforehand(string text, string name, string refusal)
    {
        var workspace = Open(text);
        var target = workspace.Service.RenameTarget(TestWorkspace.Main, workspace.Marked.At, default)!;
        workspace.TextOf(target.Range).Should().Be(name);
        target.Name.Should().Be(name);
        (target.Refusal ?? "").Contains(refusal, StringComparison.Ordinal).Should().BeTrue();
        (target.Refusal is null).Should().Be(refusal.Length == 0);
    }

    [Fact]
    public void Nothing_is_told_where_no_name_stands()
    {
        var workspace = Open("vehicle v\n    wheelb$0ase 2 m");
        workspace.Service.RenameTarget(TestWorkspace.Main, workspace.Marked.At, default).Should().BeNull();
    }

    private static TestWorkspace Open(string main) => new(main, ("parts.rig", Parts), ("rigs.rig", Rigs));

    private static string Text(TestWorkspace workspace, FileId file) => file.Name switch { "parts.rig" => Parts, "rigs.rig" => Rigs, _ => workspace.Marked.Text };

    private static List<string> Findings(TestWorkspace workspace) =>
        [.. new[] { TestWorkspace.Main, new FileId("/rigs/parts.rig"), new("/rigs/rigs.rig") }.SelectMany(file => workspace.Service.Findings(file, default)
            .Select(finding => $"{file.Name}:{finding.Range.Start.Line} {finding.Check.Code}"))];
}
