using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Workspaces;

/// <summary>All that an answer is made from: one immutable state of the files and what is computed of them.</summary>
/// <param name="noted">Told which files' findings were asked for.</param>
internal sealed class EditorState(WorkspaceAnalysis analysis, FolderFiles folders, UnitHabit units, ImmutableDictionary<string, Severity?> severities, Action<FileId> noted)
{
    private RigIndex? rigs;

    /// <summary>With its questions answered; they are when something asks for what rests on them.</summary>
    public WorkspaceAnalysis Analysis => AsWritten.Solved;

    /// <summary>Without waiting for answers.</summary>
    public WorkspaceAnalysis AsWritten { get; } = analysis;

    public FolderFiles Folders { get; } = folders;

    public UnitHabit Units { get; } = units;

    /// <summary>As the person wants to see findings of some checks, by slug or code; null for not at all.</summary>
    public ImmutableDictionary<string, Severity?> Severities { get; } = severities;

    public Workspace Workspace => AsWritten.Workspace;

    public RigIndex Rigs => rigs ??= new RigIndex(this);

    public void Noted(FileId file) => noted(file);

    /// <summary>Every file that belongs together, those that are open first.</summary>
    public IEnumerable<FileId> AllFiles => Workspace.OpenFiles.Order(FolderFiles.ByPath).Concat(Folders.All).Distinct();

    /// <summary>Whether findings are shown of the file: it is open, or lies in the workspace's folders.</summary>
    public bool IsWatched(FileId file) => Workspace.OpenFile(file) is not null || Folders.Covers(file);
}
