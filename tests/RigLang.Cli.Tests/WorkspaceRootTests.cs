using RigLang.Cli.Files;

namespace RigLang.Cli.Tests;

public sealed class WorkspaceRootTests : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("riglang-").FullName.Replace('\\', '/');

    public void Dispose() => Directory.Delete(root, recursive: true);

    [Fact]
    public void Is_the_nearest_folder_under_version_control()
    {
        Directory.CreateDirectory(root + "/repo/.git");
        Directory.CreateDirectory(root + "/repo/rigs/deep");

        WorkspaceRoot.Of(root + "/repo/rigs/deep", root).Should().Be(root + "/repo");
    }

    [Fact]
    public void A_work_tree_whose_git_is_a_file_counts_too()
    {
        Directory.CreateDirectory(root + "/tree/rigs");
        File.WriteAllText(root + "/tree/.git", "gitdir: elsewhere\n");

        WorkspaceRoot.Of(root + "/tree/rigs", "/").Should().Be(root + "/tree");
    }

    [Theory]
    [InlineData("/here/rigs", "/here", "/here")]
    [InlineData("/here", "/here", "/here")]
    [InlineData("/elsewhere/rigs", "/here", "/elsewhere/rigs")]
    [InlineData("/hereafter/rigs", "/here", "/hereafter/rigs")]
    public void Else_it_is_the_current_folder_where_that_holds_the_file_or_the_files_own(string folder, string current, string expected) =>
        WorkspaceRoot.Of(root + folder, root + current).Should().Be(root + expected);

    [Theory]
    [InlineData("a/../b.rig", "/w/b.rig")]
    [InlineData("./x/", "/w/x")]
    [InlineData("/y/z.rig", "/y/z.rig")]
    public void Paths_are_counted_from_the_current_folder(string path, string expected)
    {
        if (!OperatingSystem.IsWindows())
        {
            DiskPaths.Absolute(path, "/w").Should().Be(expected);
        }
    }

    [Theory]
    [InlineData("/w/a/b.rig", "/w", "a/b.rig")]
    [InlineData("/w/b.rig", "/w/a", "../b.rig")]
    [InlineData("/x.rig", "/w/a/very/deep/folder", "/x.rig")]
    [InlineData("untitled:one", "/w", "untitled:one")]
    public void A_path_is_shown_as_short_as_it_can_be(string path, string folder, string expected)
    {
        if (!OperatingSystem.IsWindows())
        {
            DiskPaths.Shown(new Model.Files.FileId(path), folder).Should().Be(expected);
        }
    }
}
