using RigLang.Analysis;
using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Benchmarks;

/// <summary>The examples that the program is shipped with, read into memory.</summary>
internal static class Examples
{
    private static readonly string[] Kinds = ["*.rig", "*.gpx"];

    /// <summary>A battery van with a caravan on spring bars, a pick-up with a travel trailer, a hatchback with a flat trailer: file and name of each rig.</summary>
    public static IReadOnlyDictionary<string, string> Rigs { get; } = new Dictionary<string, string>
    {
        ["coast"] = "people-carrier/6-rigs.rig",
        ["tour"] = "pick-up/5-rigs.rig",
        ["saturday"] = "firewood/3-saturday.rig",
    };

    public static WorkspaceAnalysis Open() => new(new Workspace(Files(), "/rigs"));

    /// <summary>All files of the examples, tracks too, below <c>/rigs</c>.</summary>
    public static MemoryFileSource Files()
    {
        var folder = Path.Combine(Root(), "examples");
        var texts = Kinds.SelectMany(ending => Directory.GetFiles(folder, ending, SearchOption.AllDirectories))
            .Select(file => ("/rigs/" + Path.GetRelativePath(folder, file).Replace('\\', '/'), File.ReadAllText(file)));
        return new MemoryFileSource([.. texts]);
    }

    public static RigParts Rig(WorkspaceAnalysis analysis, string name) =>
        RigParts.Of(analysis.Workspace, analysis.Workspace.Find(new FileId("/rigs/" + Rigs[name]), DeclarationKind.Rig, name)!);

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "RigLang.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("No folder above the benchmarks holds RigLang.sln.");
    }
}
