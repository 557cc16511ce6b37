using System.Collections.Concurrent;
using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Editing.Workspaces;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Editing;

/// <summary>
/// The workspace of one editor: the texts that are open, over the files of the disk, which are read when something asks for them. Every change makes a new
/// immutable state that shares what the change left alone. One writer at a time.
/// </summary>
public sealed class EditorWorkspace : IEditorWorkspace
{
    private readonly IFileSource source;
    private readonly UseGraph uses = new();

    // Files whose findings somebody has asked for: only theirs can have become different. The services add to it from their threads.
    private readonly ConcurrentDictionary<FileId, bool> asked = new();
    private readonly List<FileId> changed = [];
    private readonly HashSet<FileId> open = [];
    private Workspace workspace;
    private WorkspaceAnalysis analysis;
    private FolderFiles folders;
    private UnitHabit units;
    private ImmutableDictionary<string, Severity?> severities = ImmutableDictionary<string, Severity?>.Empty;
    private bool isAllTouched;

    public EditorWorkspace(IFileSource source)
    {
        this.source = source;
        workspace = new Workspace(source);
        analysis = new WorkspaceAnalysis(workspace);
        folders = new FolderFiles(source, []);
        Current = Service();
    }

    public ILanguageService Current { get; private set; }

    public IReadOnlyCollection<FileId> OpenFiles => open;

    /// <summary>In which units results are shown; a change touches no findings.</summary>
    public UnitHabit Units
    {
        get => units;
        set
        {
            units = value;
            Current = Service();
        }
    }

    /// <summary>The practice of rigs that name none; null for none.</summary>
    public string? Practice
    {
        get => workspace.DefaultPractice;
        set
        {
            if (value != workspace.DefaultPractice)
            {
                isAllTouched = true;
                Take(workspace.WithDefaultPractice(value));
            }
        }
    }

    /// <summary>How serious findings of some checks are shown, by slug or code; null hides them.</summary>
    public ImmutableDictionary<string, Severity?> Severities
    {
        get => severities;
        set
        {
            severities = value;
            isAllTouched = true;
            Current = Service();
        }
    }

    public void Open(FileId file, string text)
    {
        open.Add(file);
        // What the disk says is often what is opened: then all that was understood of it stays.
        var known = workspace.Find(file);
        Take(known is null ? RigFile.Parse(file, text) : WithText(known, text));
    }

    public void Change(FileId file, ImmutableArray<(LineRange? Range, string NewText)> changes)
    {
        open.Add(file);
        var before = workspace.Find(file) ?? RigFile.Parse(file, "");
        var syntax = before.Syntax;
        foreach (var (range, text) in changes)
        {
            var (start, end) = range is { } stretch ? (stretch.Start, stretch.End) : (default, EndOf(syntax));
            syntax = syntax.WithChange(start, end, text);
        }

        Take(before.With(syntax));
    }

    public void Close(FileId file)
    {
        if (open.Remove(file))
        {
            changed.Add(file);
            Take(workspace.WithClosed(file));
        }
    }

    public void DiskChanged(IEnumerable<FileId> files)
    {
        var named = files.ToList();
        var (stored, isListedAnew) = folders.Expand(named.Where(file => !open.Contains(file)), asked.Keys.Concat(workspace.Stored.Known));
        stored.RemoveAll(open.Contains);
        folders = isListedAnew ? new FolderFiles(source, folders.Folders) : folders.WithChanged(stored);
        isAllTouched |= isListedAnew;
        changed.AddRange(stored);
        // A track may be named by any file; they are few, and rare.
        isAllTouched |= stored.Exists(file => !FolderFiles.IsRig(file));
        Take(workspace.WithStoredChanged(stored));
    }

    public void SetFolders(IEnumerable<string> folders)
    {
        var paths = folders.Distinct().ToImmutableArray();
        this.folders = new FolderFiles(source, paths);
        isAllTouched = true;
        Take(workspace.WithFolders(paths));
    }

    public ImmutableArray<FileId> TakeTouched()
    {
        if (changed.Count == 0 && !isAllTouched)
        {
            return [];
        }

        var edited = changed.AsEnumerable().Reverse().Distinct().ToList();
        var candidates = isAllTouched ? open.Concat(folders.All).Concat(asked.Keys.Order(FolderFiles.ByPath)) : open.Concat(asked.Keys.Order(FolderFiles.ByPath));
        var others = isAllTouched ? candidates : uses.Dependants(workspace, edited, candidates);
        ImmutableArray<FileId> touched = [.. edited.Where(IsWatched).Concat(others).Distinct()];
        changed.Clear();
        isAllTouched = false;
        return touched;
    }

    /// <summary>A file that left the disk still has findings to take back.</summary>
    private bool IsWatched(FileId file) => open.Contains(file) || asked.ContainsKey(file) || (FolderFiles.IsRig(file) && folders.Covers(file));

    private static RigFile WithText(RigFile file, string text) => file.With(file.Syntax.WithChange(default, EndOf(file.Syntax), text));

    private static Syntax.LinePosition EndOf(FileSyntax syntax) => new(syntax.Lines.Length - 1, syntax.Lines[^1].Text.Length);

    private void Take(RigFile file)
    {
        changed.Add(file.Id);
        Take(workspace.WithOpen(file));
    }

    private void Take(Workspace next)
    {
        workspace = next;
        analysis = analysis.With(next);
        Current = Service();
    }

    private LanguageService Service() => new(new EditorState(analysis, folders, units, severities, file => asked[file] = true));
}
