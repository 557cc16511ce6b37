using System.Collections.Immutable;
using RigLang.Model.Files;

namespace RigLang.Editing;

/// <summary>
/// The changing side: one writer tells it what happened and takes the snapshot that follows. Text open in the editor wins over the disk.
/// Not safe for several writers at once; the snapshots are.
/// </summary>
public interface IEditorWorkspace
{
    /// <summary>The state now.</summary>
    ILanguageService Current { get; }

    /// <summary>Files open in the editor.</summary>
    IReadOnlyCollection<FileId> OpenFiles { get; }

    void Open(FileId file, string text);

    /// <summary>Changes in the order given, each in terms of the text the one before it left; a null range replaces the whole text.</summary>
    void Change(FileId file, ImmutableArray<(LineRange? Range, string NewText)> changes);

    void Close(FileId file);

    /// <summary>The disk changed under us: read these files again unless they are open. A folder stands for all files that are or were in it.</summary>
    void DiskChanged(IEnumerable<FileId> files);

    /// <summary>Sets the folders whose files see each other; reads nothing before it must.</summary>
    void SetFolders(IEnumerable<string> folders);

    /// <summary>The files whose findings may differ since the last call, open or not, the one edited last first. Emptied by the call.</summary>
    ImmutableArray<FileId> TakeTouched();
}
