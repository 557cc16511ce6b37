using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Comparing;

/// <summary>
/// One of the two states that are compared, computed by itself: with the used files and tracks that it has. Files of the two states meet by their names, which are
/// their paths as seen from each state's own root.
/// </summary>
public sealed class ComparedState
{
    private static readonly MemoryFileSource NoFiles = new(ImmutableDictionary<FileId, string>.Empty);

    private readonly IFileSource source;
    private readonly string root;
    private readonly ImmutableDictionary<string, FileId> byName;

    /// <param name="source">The files as of this state.</param>
    /// <param name="root">The folder that names are counted from, and that <c>use</c> can't leave; absolute, forward slashes.</param>
    /// <param name="files">What is compared. The files that these use, straight or by way of others, come along.</param>
    /// <param name="alias">Another name for a file, where two single files are compared that are called differently.</param>
    public ComparedState(IFileSource source, string root, IEnumerable<FileId> files, Func<FileId, string?>? alias = null)
    {
        this.source = source;
        this.root = root;
        Analysis = new WorkspaceAnalysis(new Workspace(source, root)).Solved;
        Asked = [.. files];
        Files = [.. WithUsed(Analysis.Workspace, Asked)];
        byName = Files.ToImmutableDictionary(file => alias?.Invoke(file) ?? FilePaths.Relative(file, root));
        Names = byName.ToImmutableDictionary(pair => pair.Value, pair => pair.Key);
    }

    /// <summary>One state of an editor's or the program's files, for comparing declarations within it; no file of it is asked for by itself.</summary>
    public ComparedState(WorkspaceAnalysis analysis)
    {
        source = NoFiles;
        root = analysis.Workspace.Folders.FirstOrDefault() ?? "";
        Analysis = analysis;
        Asked = Files = [];
        byName = ImmutableDictionary<string, FileId>.Empty;
        Names = ImmutableDictionary<FileId, string>.Empty;
    }

    public WorkspaceAnalysis Analysis { get; }

    public Workspace Workspace => Analysis.Workspace;

    /// <summary>The files that were asked for.</summary>
    public ImmutableArray<FileId> Asked { get; }

    /// <summary>Those, and the files that they use. All could be read.</summary>
    public ImmutableArray<FileId> Files { get; }

    /// <summary>What each file is called in both states.</summary>
    public ImmutableDictionary<FileId, string> Names { get; }

    /// <summary>The declarations of all files, in the order of the files and their lines.</summary>
    public IEnumerable<Declaration> Declarations => Files.SelectMany(file => Workspace.Link(file)?.Declarations ?? []);

    public FileId? Find(string name) => byName.TryGetValue(name, out var file) ? file : null;

    /// <summary>Where a file of that name lies, or would lie, in this state.</summary>
    public FileId PlaceOf(string name) => Find(name) ?? new FileId($"{root}/{name}");

    /// <summary>The name of any file of this state, tracks included.</summary>
    public string NameOf(FileId file) => Names.GetValueOrDefault(file) ?? FilePaths.Relative(file, root);

    /// <summary>The text of a file; null when it isn't there or can't be read.</summary>
    public string? Text(FileId file) => source.Read(file).Text;

    /// <summary>The tracks that the declarations name, each once.</summary>
    public IEnumerable<FileId> Tracks => Declarations.SelectMany(TracksOf).Distinct();

    private static IEnumerable<FileId> TracksOf(Declaration declaration) =>
        from block in declaration.Own.OwnLines.WithInner()
        from line in block.Facts
        from slot in line.Declaration.Signature.Slots
        where slot.Form is PathForm
        let path = line.Values.GetValueOrDefault(slot.Role) as TextValue
        where path is not null
        let file = FilePaths.Resolve(declaration.Own.File, path.Text)
        where file is not null
        select file.Value;

    private static IEnumerable<FileId> WithUsed(Workspace workspace, IEnumerable<FileId> asked)
    {
        var seen = new HashSet<FileId>();
        var open = new Queue<FileId>(asked);
        while (open.TryDequeue(out var next))
        {
            if (!seen.Add(next) || workspace.Link(next) is not { } linked)
            {
                continue;
            }

            yield return next;
            foreach (var used in linked.Used)
            {
                open.Enqueue(used.Id);
            }
        }
    }
}
