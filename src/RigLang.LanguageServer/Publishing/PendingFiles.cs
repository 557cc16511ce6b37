using RigLang.Model.Files;

namespace RigLang.LanguageServer.Publishing;

/// <summary>Files to look at, in the order to do it: those of the newest write first, then what earlier ones left.</summary>
internal sealed class PendingFiles
{
    private List<FileId> _order = [];
    private readonly HashSet<FileId> _edited = [];

    internal int Count => _order.Count;

    internal FileId? First => _order.Count > 0 ? _order[0] : null;

    /// <param name="touched">Files whose findings may differ.</param>
    /// <param name="about">The file that was opened, edited or closed: looked at first.</param>
    /// <param name="isOpen">It is open, so the client waits for its set even if that is the same as before.</param>
    internal void Add(IEnumerable<FileId> touched, FileId? about, bool isOpen)
    {
        List<FileId> order = about is { } file ? [file] : [];
        order.AddRange(touched);
        order.AddRange(_order);
        _order = [.. order.Distinct()];
        if (about is { } typedIn && isOpen)
        {
            _edited.Add(typedIn);
        }
    }

    internal void Clear()
    {
        _order = [];
        _edited.Clear();
    }

    /// <summary>Whether it was opened or edited since it was last taken off.</summary>
    internal bool Remove(FileId file)
    {
        _order.Remove(file);
        return _edited.Remove(file);
    }
}
