using System.Collections.Immutable;
using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;

namespace RigLang.Editing.Tests;

/// <summary>Paths in texts: links to follow, and what becomes of them when files move.</summary>
public class PathTests
{
    private static readonly (string Path, string Text)[] Files =
    [
        ("/rigs/main.rig", "use \"parts/van.rig\"\nuse \"other.rig\"\ntrip t\n    leg a\n        gpx \"tracks/a.gpx\"\n"),
        ("/rigs/other.rig", "use \"/rigs/parts/van.rig\"\n"),
        ("/rigs/parts/van.rig", "use \"../other.rig\"\nvehicle van\n"),
        ("/rigs/tracks/a.gpx", "<gpx/>"),
    ];

    [Fact]
    public void What_use_names_and_tracks_are_links_without_their_quotes()
    {
        var service = Open().Current;
        service.Links(new FileId("/rigs/main.rig"), default).Select(link => $"{link.Range.Start.Line}:{link.Range.Start.Character}-{link.Range.End.Character} {link.Target}")
            .Should().Equal("0:5-18 /rigs/parts/van.rig", "1:5-14 /rigs/other.rig", "4:13-25 /rigs/tracks/a.gpx");
    }

    [Theory]
    [InlineData("/rigs/parts/van.rig", "/rigs/parts/bus.rig", "main.rig \"parts/bus.rig\"; other.rig \"/rigs/parts/bus.rig\"")]
    [InlineData("/rigs/parts/van.rig", "/rigs/van.rig", "main.rig \"van.rig\"; other.rig \"/rigs/van.rig\"; van.rig \"other.rig\"")]
    [InlineData("/rigs/parts", "/rigs/deep/er", "main.rig \"deep/er/van.rig\"; other.rig \"/rigs/deep/er/van.rig\"; van.rig \"../../other.rig\"")]
    [InlineData("/rigs/main.rig", "/rigs/sub/main.rig", "main.rig \"../parts/van.rig\"; main.rig \"../other.rig\"; main.rig \"../tracks/a.gpx\"")]
    [InlineData("/rigs/tracks/a.gpx", "/rigs/tracks/b c.gpx", "main.rig \"tracks/b c.gpx\"")]
    [InlineData("/rigs/par", "/rigs/parx", "")]
    public void A_move_changes_the_paths_that_it_makes_wrong_and_no_others(string from, string to, string expected)
    {
        var edits = Open().Current.PathsAfterMove([(new FileId(from), new FileId(to))], default);
        string.Join("; ", edits.Select(edit => $"{edit.Place.File.Name} \"{edit.NewText}\"")).Should().Be(expected);
    }

    [Fact]
    public void Files_that_move_together_keep_the_paths_between_them()
    {
        ImmutableArray<(FileId, FileId)> moves = [(new("/rigs/main.rig"), new("/rigs/x/main.rig")), (new("/rigs/parts"), new("/rigs/x/parts")), (new("/rigs/other.rig"), new("/rigs/x/other.rig"))];
        Open().Current.PathsAfterMove(moves, default).Select(edit => edit.NewText).Should().Equal("../tracks/a.gpx", "/rigs/x/parts/van.rig");
    }

    [Theory]
    [InlineData("/a/b.rig", "/a/c.rig", "c.rig")]
    [InlineData("/a/b.rig", "/a/x/c.rig", "x/c.rig")]
    [InlineData("/a/y/b.rig", "/a/x/c.rig", "../x/c.rig")]
    [InlineData("/b.rig", "/c.rig", "c.rig")]
    [InlineData("C:/a/b.rig", "C:/c.rig", "../c.rig")]
    public void A_path_from_one_file_to_another_leads_there(string from, string to, string path)
    {
        FilePaths.PathFrom(new FileId(from), new FileId(to)).Should().Be(path);
        FilePaths.Resolve(new FileId(from), path).Should().Be(new FileId(to));
    }

    [Fact]
    public void A_folder_that_is_renamed_on_the_disk_takes_its_files_with_it()
    {
        var source = new ChangingSource(Files);
        var workspace = new EditorWorkspace(source);
        workspace.SetFolders(["/rigs"]);
        var (van, moved, main) = (new FileId("/rigs/parts/van.rig"), new FileId("/rigs/bits/van.rig"), new FileId("/rigs/main.rig"));
        workspace.Current.Findings(main, default).Should().NotContain(finding => finding.Check.Slug == "used-file-missing");
        workspace.Current.NamesLike("van", default).Should().ContainSingle().Which.Place.File.Should().Be(van);
        workspace.TakeTouched();

        source.Texts[moved] = source.Texts[van];
        source.Texts.Remove(van);
        workspace.DiskChanged([new FileId("/rigs/parts"), new FileId("/rigs/bits")]);

        workspace.TakeTouched().Should().Contain([van, moved, main]);
        workspace.Current.NamesLike("van", default).Should().ContainSingle().Which.Place.File.Should().Be(moved);
        workspace.Current.Findings(main, default).Should().Contain(finding => finding.Check.Slug == "used-file-missing");
    }

    private static EditorWorkspace Open()
    {
        var workspace = new EditorWorkspace(new MemoryFileSource(Files));
        workspace.SetFolders(["/rigs"]);
        return workspace;
    }
}
