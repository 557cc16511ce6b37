using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>What the writer tells the workspace, and which files' findings may have become different.</summary>
public class WorkspaceTests
{
    private static readonly FileId Van = new("/rigs/van.rig");
    private static readonly FileId Rigs = new("/rigs/rigs.rig");
    private static readonly FileId Trips = new("/rigs/trips/trips.rig");
    private static readonly FileId Other = new("/rigs/other.rig");

    [Fact]
    public void Unsaved_text_wins_over_the_disk_and_closing_brings_the_disk_back()
    {
        var disk = new ChangingSource((Van.Path, "vehicle van\n    wheelbase 2.94 m\n"), (Rigs.Path, "use \"van.rig\"\nrig coast\n    vehicle bus\n"));
        var workspace = Open(disk, Rigs);
        Slugs(workspace, Rigs).Should().Contain("name-unknown");

        workspace.Open(Van, "vehicle bus\n    wheelbase 2.94 m\n");
        Slugs(workspace, Rigs).Should().NotContain("name-unknown");

        workspace.Close(Van);
        Slugs(workspace, Rigs).Should().Contain("name-unknown");
    }

    [Fact]
    public void A_snapshot_stays_as_it_was()
    {
        var workspace = Open(Disk(), Van);
        var before = workspace.Current;
        workspace.Change(Van, [(null, "nonsense")]);
        before.Outline(Van, default).Should().ContainSingle().Which.Name.Should().Be("van");
        workspace.Current.Outline(Van, default).Should().BeEmpty();
    }

    [Fact]
    public void An_edit_touches_the_file_first_then_those_that_use_it_by_any_way()
    {
        var workspace = Open(Disk(), Van, Rigs, Trips, Other);
        AskAll(workspace);
        workspace.TakeTouched();

        workspace.Change(Van, [(new LineRange(new LinePosition(0, 0), new LinePosition(0, 0)), "#\n")]);
        var touched = workspace.TakeTouched();
        touched[0].Should().Be(Van);
        touched.Skip(1).Should().BeEquivalentTo([Rigs, Trips]);
        workspace.TakeTouched().Should().BeEmpty();
    }

    [Fact]
    public void The_file_edited_last_comes_first()
    {
        var workspace = Open(Disk(), Van, Other);
        workspace.TakeTouched();
        workspace.Change(Van, [(null, "vehicle van")]);
        workspace.Change(Other, [(null, "vehicle x")]);
        workspace.TakeTouched().Take(2).Should().Equal(Other, Van);
    }

    [Fact]
    public void Opening_the_folders_touches_every_file_in_them_open_ones_first()
    {
        var workspace = Open(Disk(), Rigs);
        var touched = workspace.TakeTouched();
        touched[0].Should().Be(Rigs);
        touched.Should().BeEquivalentTo([Van, Rigs, Trips, Other]);
    }

    [Fact]
    public void No_file_is_read_before_something_asks_for_it()
    {
        var disk = Disk();
        var workspace = new EditorWorkspace(disk);
        workspace.SetFolders(["/rigs"]);
        disk.Reads.Should().BeEmpty();

        workspace.Open(Other, "vehicle lone\n");
        workspace.Current.Outline(Other, default);
        workspace.Current.Findings(Other, default);
        disk.Reads.Should().OnlyContain(file => file == Other);
    }

    [Fact]
    public void A_change_on_the_disk_is_read_unless_the_file_is_open()
    {
        var disk = Disk();
        var workspace = Open(disk, Rigs);
        AskAll(workspace);
        workspace.TakeTouched();

        disk.Texts[Van] = "vehicle bus\n";
        workspace.DiskChanged([Van]);
        workspace.TakeTouched().Should().Contain([Van, Rigs, Trips]);
        Slugs(workspace, Rigs).Should().Contain("name-unknown");

        disk.Texts[Rigs] = "nonsense";
        workspace.DiskChanged([Rigs]);
        workspace.Current.Outline(Rigs, default).Should().NotBeEmpty();
    }

    [Fact]
    public void A_file_that_leaves_the_disk_takes_its_findings_with_it()
    {
        var disk = Disk();
        disk.Texts[Other] = "vehicle lone\n    wheelbase 3\n";
        var workspace = Open(disk);
        Slugs(workspace, Other).Should().Contain("unit-missing");
        workspace.TakeTouched();

        disk.Texts.Remove(Other);
        workspace.DiskChanged([Other]);
        workspace.TakeTouched().Should().Contain(Other);
        Slugs(workspace, Other).Should().BeEmpty();
    }

    [Theory]
    [InlineData("/elsewhere/lone.rig")]
    [InlineData("untitled:Untitled-1")]
    public void A_file_outside_all_folders_works_while_it_is_open(string path)
    {
        var lone = new FileId(path);
        var workspace = Open(Disk());
        workspace.Open(lone, "vehicle van\n    wheelbase 3\n");
        workspace.TakeTouched().Should().Contain(lone);
        Slugs(workspace, lone).Should().Contain("unit-missing");
        workspace.Current.Hover(lone, new LinePosition(1, 6), default).Should().NotBeNull();

        workspace.Close(lone);
        workspace.TakeTouched().Should().Contain(lone);
        Slugs(workspace, lone).Should().BeEmpty();
    }

    [Fact]
    public void Changes_of_one_message_follow_one_another()
    {
        var workspace = Open(Disk(), Van);
        workspace.Change(Van, [(new LineRange(new LinePosition(0, 8), new LinePosition(0, 11)), "bus"), (new LineRange(new LinePosition(0, 11), new LinePosition(0, 11)), "es")]);
        workspace.Current.Outline(Van, default).Should().ContainSingle().Which.Name.Should().Be("buses");
    }

    private static void AskAll(EditorWorkspace workspace)
    {
        foreach (var file in new[] { Van, Rigs, Trips, Other })
        {
            workspace.Current.Findings(file, default);
        }
    }

    private static EditorWorkspace Open(ChangingSource disk, params FileId[] files)
    {
        var workspace = new EditorWorkspace(disk);
        workspace.SetFolders(["/rigs"]);
        foreach (var file in files)
        {
            workspace.Open(file, disk.Texts[file]);
        }

        return workspace;
    }

    private static ChangingSource Disk() => new(
        (Van.Path, "vehicle van\n    wheelbase 2.94 m\n"),
        (Rigs.Path, "use \"van.rig\"\nrig coast\n    vehicle van\n"),
        (Trips.Path, "use \"../rigs.rig\"\ntrip t\n    rig coast\n"),
        (Other.Path, "vehicle lone\n"));

    private static IEnumerable<string> Slugs(EditorWorkspace workspace, FileId file) => workspace.Current.Findings(file, default).Select(finding => finding.Check.Slug);
}
