using System.Collections.Immutable;
using RigLang.Editing;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Tests.Support;

/// <summary>A workspace in memory. A line with "bad" in it has a finding; an edit touches the edited file and its dependants.</summary>
internal sealed class FakeWorkspace : IEditorWorkspace
{
    private readonly Dictionary<FileId, string> _open = [];
    private readonly List<FileId> _touched = [];
    private int _writers;

    /// <summary>Files as they are on the disk.</summary>
    public Dictionary<FileId, string> Disk { get; } = [];

    /// <summary>Files whose findings change with every edit of the key.</summary>
    public Dictionary<FileId, FileId[]> Dependants { get; } = [];

    public FakeAnswers Answers { get; } = new();

    public List<string> Log { get; } = [];

    /// <summary>Called inside every write.</summary>
    public Action<string> InsideWrite { get; set; } = _ => { };

    public ILanguageService Current
    {
        get
        {
            var texts = Disk.ToImmutableDictionary().SetItems(_open);
            return new FakeService(texts, Answers);
        }
    }

    public IReadOnlyCollection<FileId> OpenFiles => _open.Keys;

    public void Open(FileId file, string text) => Write($"open {file}", () => Touch(file, text));

    public void Change(FileId file, ImmutableArray<(LineRange? Range, string NewText)> changes) =>
        Write($"change {file}", () => Touch(file, changes.Aggregate(_open[file], (text, change) => TextEdits.Apply(text, change.Range, change.NewText))));

    public void Close(FileId file) => Write($"close {file}", () =>
    {
        _open.Remove(file);
        _touched.Add(file);
    });

    public void DiskChanged(IEnumerable<FileId> files) => Write($"disk {string.Join(' ', files)}", () => _touched.AddRange(files));

    public void SetFolders(IEnumerable<string> folders) => Write($"folders {string.Join(' ', folders)}", () => { });

    public ImmutableArray<FileId> TakeTouched()
    {
        ImmutableArray<FileId> touched = [.. _touched];
        _touched.Clear();
        return touched;
    }

    private void Touch(FileId file, string text)
    {
        _open[file] = text;
        _touched.Add(file);
        _touched.AddRange(Dependants.GetValueOrDefault(file, []));
    }

    private void Write(string what, Action write)
    {
        if (Interlocked.Increment(ref _writers) != 1)
        {
            throw new InvalidOperationException("two writes at once");
        }

        Log.Add(what);
        InsideWrite(what);
        write();
        Interlocked.Decrement(ref _writers);
    }
}
