namespace RigLang.EndToEnd;

/// <summary>Places in the repository that the tests stand in.</summary>
public static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string Examples => Path.Combine(Root, "examples");

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "RigLang.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException("The tests don't stand in the repository: no RigLang.sln above them.");
    }
}
