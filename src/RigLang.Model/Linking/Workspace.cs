using System.Collections.Concurrent;
using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Tracks;

namespace RigLang.Model.Linking;

/// <summary>
/// One immutable state of all files: those open in an editor with their unsaved text, the rest as stored. What is asked for is read and linked then,
/// and kept; a next state takes over what its files still share with this one. Safe to use from several threads.
/// </summary>
public sealed class Workspace
{
    private readonly ImmutableDictionary<FileId, RigFile> open;
    private readonly ConcurrentDictionary<FileId, LinkedFile?> linked = new();
    private readonly Workspace? before;

    public Workspace(IFileSource source, params string[] folders)
        : this([.. folders], ImmutableDictionary<FileId, RigFile>.Empty, new StoredFiles(source), null)
    {
    }

    private Workspace(ImmutableArray<string> folders, ImmutableDictionary<FileId, RigFile> open, StoredFiles stored, Workspace? before)
    {
        Folders = folders;
        this.open = open;
        Stored = stored;
        // Only the last state matters; holding on to the one before it would hold them all.
        this.before = before?.Detached();
        DefaultPractice = before?.DefaultPractice;
    }

    /// <summary>The folders that belong together; empty where single files are looked at, which then see only what lies beside and below them.</summary>
    public ImmutableArray<string> Folders { get; }

    public StoredFiles Stored { get; }

    /// <summary>The practice of rigs that name none, as whoever looks wishes; null where only what the files name counts.</summary>
    public string? DefaultPractice { get; private init; }

    /// <summary>Files open in an editor.</summary>
    public IEnumerable<FileId> OpenFiles => open.Keys;

    public Workspace WithOpen(RigFile file) => new(Folders, open.SetItem(file.Id, file), Stored, this);

    public Workspace WithClosed(FileId file) => new(Folders, open.Remove(file), Stored.Without([file]), this);

    public Workspace WithStoredChanged(IEnumerable<FileId> files) => new(Folders, open, Stored.Without(files), this);

    /// <summary>Another text for a track than is stored; null for none.</summary>
    public Workspace WithTrack(FileId file, string? gpx) => new(Folders, open, Stored.WithTrack(file, gpx), this);

    public Workspace WithFolders(IEnumerable<string> folders) => new([.. folders], open, Stored, this);

    public Workspace WithDefaultPractice(string? name) => new(Folders, open, Stored, this) { DefaultPractice = name };

    public RigFile? OpenFile(FileId id) => open.GetValueOrDefault(id);

    /// <summary>The file, or null when there is none.</summary>
    public RigFile? Find(FileId id) => Read(id).File;

    /// <summary>The file, or why it can't be read.</summary>
    public (RigFile? File, string? Problem) Read(FileId id) => open.TryGetValue(id, out var file) ? (file, null) : Stored.Rig(id);

    public TrackReading Track(FileId id) => Stored.Track(id);

    /// <summary>Every file of the folders, and those open besides.</summary>
    public IEnumerable<FileId> AllFiles() => Folders.SelectMany(Stored.RigFilesUnder).Concat(open.Keys).Distinct();

    /// <summary>Whether a file may be read from another: it must lie in the folders, or below the asking file's own folder where there are none.</summary>
    public bool IsInside(FileId file, FileId from) =>
        Folders.Any(folder => FilePaths.IsUnder(from, [folder])) ? FilePaths.IsUnder(file, Folders) : FilePaths.IsUnder(file, [from.Folder]);

    /// <summary>The file with its names looked up; null when there is no such file.</summary>
    public LinkedFile? Link(FileId id) => linked.GetOrAdd(id, file => Find(file) is { } found ? Linker.Link(this, found, before?.LinkedBefore(file)) : null);

    /// <summary>The declaration of that kind and name as seen from a file: its own, or one of a file that it uses.</summary>
    public Declaration? Find(FileId from, DeclarationKind kind, string name) => Link(from)?.Find(this, kind, name);

    /// <summary>The place's line in the file as it stands now, and the file; null when the declaration is no longer there.</summary>
    public int? LineOf(Place place) => Find(place.File)?.FirstLineOf(place.Declaration) is { } first and >= 0 ? first + place.Line : null;

    private LinkedFile? LinkedBefore(FileId file) => linked.TryGetValue(file, out var found) ? found : before?.LinkedBefore(file);

    private Workspace Detached()
    {
        var copy = new Workspace(Folders, open, Stored, null);
        foreach (var (file, found) in linked)
        {
            copy.linked[file] = found;
        }

        foreach (var (file, found) in before?.linked ?? [])
        {
            copy.linked.TryAdd(file, found);
        }

        return copy;
    }
}
