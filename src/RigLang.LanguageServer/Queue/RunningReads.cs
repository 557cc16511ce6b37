using RigLang.Model.Files;

namespace RigLang.LanguageServer.Queue;

/// <summary>The reads of a file's text that are under way, so that an edit can break them off.</summary>
internal sealed class RunningReads
{
    private readonly Lock _lock = new();
    private readonly Dictionary<CancellationTokenSource, FileId> _reads = [];

    internal CancellationTokenSource Begin(FileId file)
    {
        var source = new CancellationTokenSource();
        lock (_lock)
        {
            _reads.Add(source, file);
        }

        return source;
    }

    internal void End(CancellationTokenSource? source)
    {
        if (source is null)
        {
            return;
        }

        lock (_lock)
        {
            _reads.Remove(source);
        }
    }

    internal void Supersede(FileId file)
    {
        CancellationTokenSource[] stale;
        lock (_lock)
        {
            stale = [.. _reads.Where(r => r.Value == file).Select(r => r.Key)];
        }

        foreach (var source in stale)
        {
            source.Cancel();
        }
    }
}
