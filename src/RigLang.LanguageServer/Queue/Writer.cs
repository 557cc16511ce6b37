using System.Collections.Immutable;
using RigLang.Editing;
using RigLang.LanguageServer.Documents;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Queue;

/// <summary>What a write changes. Only the queue holds one, and only one write sees it at a time.</summary>
internal sealed class Writer(IEditorWorkspace workspace)
{
    internal IEditorWorkspace Workspace => workspace;

    internal OpenDocuments Documents { get; set; } = OpenDocuments.None;

    internal Snapshot Snapshot() => new(workspace.Current, Documents);
}

/// <summary>What a write did, told to the publisher.</summary>
/// <param name="Snapshot">The state it left.</param>
/// <param name="Touched">Files whose findings may differ, the edited one first.</param>
/// <param name="About">The file that was opened, edited or closed in the editor, if it was one.</param>
internal sealed record WriteDone(Snapshot Snapshot, ImmutableArray<FileId> Touched, FileId? About);
