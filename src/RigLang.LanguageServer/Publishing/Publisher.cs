using RigLang.LanguageServer.Client;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Publishing;

/// <summary>
/// The one that sends findings. It works through the files that may differ, the one being typed in first, on the newest state there is. Each write calls off the
/// pass before it: what that pass had not sent yet is looked at again in the new one. As there is one loop and it sends one set after the other, no older set can
/// follow a newer one.
/// </summary>
internal sealed class Publisher : IAsyncDisposable
{
    /// <summary>From how many files on it is shown how far a pass is.</summary>
    private const int LongPass = 12;

    private readonly Lock _lock = new();
    private readonly PendingFiles _pending = new();
    private readonly SentSets _sent = new();
    private readonly SemaphoreSlim _wake = new(0, 1);
    private readonly CancellationTokenSource _end = new();
    private readonly Session _session;
    private readonly Task _loop;

    private CancellationTokenSource _pass = new();
    private readonly HashSet<FileId> _open = [];
    private Snapshot? _newest;
    private bool _refresh;
    private bool _reportsStale;
    private long _passes;

    internal Publisher(Session session)
    {
        _session = session;
        _loop = Task.Run(RunAsync);
    }

    /// <summary>A write is done: publish what it touched. Called in the order of the writes.</summary>
    internal void Post(WriteDone write)
    {
        lock (_lock)
        {
            _pass.Cancel();
            _newest = write.Snapshot;
            _pending.Add(write.Touched, write.About, isOpen: write.About is { } about && write.Snapshot.Documents.Contains(about));
            _reportsStale |= !write.Touched.IsEmpty;
            _refresh |= write.Touched.Any(file => file != write.About && write.Snapshot.Documents.Contains(file));
        }

        Wake();
    }

    /// <summary>What is shown between the lines has changed in every file, as when a setting changes.</summary>
    internal void RefreshAll()
    {
        lock (_lock)
        {
            _refresh = true;
        }

        Wake();
    }

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync().ConfigureAwait(false);
        lock (_lock)
        {
            _pass.Cancel();
        }

        await _loop.WaitAsync(LanguageServerHost.Patience).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    private void Wake()
    {
        lock (_wake)
        {
            if (_wake.CurrentCount == 0)
            {
                _wake.Release();
            }
        }
    }

    private async Task RunAsync()
    {
        while (!_end.IsCancellationRequested)
        {
            await _wake.WaitAsync(_end.Token).ConfigureAwait(false);
            Snapshot? snapshot;
            CancellationToken pass;
            lock (_lock)
            {
                snapshot = _newest;
                _pass = new CancellationTokenSource();
                pass = _pass.Token;
            }

            if (snapshot is not null)
            {
                await PassAsync(snapshot, pass).ConfigureAwait(false);
                await AnswerAsync(snapshot, pass).ConfigureAwait(false);
            }

            Refresh(pass);
        }
    }

    private async Task PassAsync(Snapshot snapshot, CancellationToken pass)
    {
        var (done, all) = (0, Pending());
        await using var progress = all >= LongPass && _session.Features.WorkDoneProgress ? PassProgress.Begin(_session.Client, ++_passes, "Checking rigs") : null;
        while (Next(pass) is { } file && !_end.IsCancellationRequested)
        {
            progress?.Report(done++, all);
            Diagnostic[]? set;
            try
            {
                set = _session.Diagnostics.Translate(snapshot.Service.FindingsAtOnce(file, pass), file, snapshot.Documents);
                Leave(file, snapshot.Service.HasOpenQuestions(file));
            }
            catch (OperationCanceledException) when (pass.IsCancellationRequested)
            {
                return;
            }
            catch (Exception failure)
            {
                _session.Log.Failure($"checking {file.Name}", failure);
                set = null;
            }

            foreach (var message in Settle(file, set, snapshot, pass))
            {
                await _session.Client.PublishAsync(message).ConfigureAwait(false);
            }
        }
    }

    /// <summary>Once everything is said that is there at once, questions are answered, and what their answers show is said.</summary>
    private async Task AnswerAsync(Snapshot snapshot, CancellationToken pass)
    {
        while (NextOpen(pass) is { } file && !_end.IsCancellationRequested)
        {
            Diagnostic[]? set;
            try
            {
                set = _session.Diagnostics.Translate(snapshot.Service.Findings(file, pass), file, snapshot.Documents);
            }
            catch (OperationCanceledException) when (pass.IsCancellationRequested)
            {
                return;
            }
            catch (Exception failure)
            {
                _session.Log.Failure($"answering the questions of {file.Name}", failure);
                set = null;
            }

            Leave(file, false);
            foreach (var message in Settle(file, set, snapshot, pass))
            {
                await _session.Client.PublishAsync(message).ConfigureAwait(false);
            }
        }
    }

    /// <summary>Whether the file's questions are still to be answered.</summary>
    private void Leave(FileId file, bool isOpen)
    {
        lock (_lock)
        {
            if (isOpen)
            {
                _open.Add(file);
            }
            else
            {
                _open.Remove(file);
            }
        }
    }

    /// <summary>Not while a set is pending: a write that came between has the word first.</summary>
    private FileId? NextOpen(CancellationToken pass)
    {
        lock (_lock)
        {
            return pass.IsCancellationRequested || _pending.First is not null || _open.Count == 0 ? null : _open.First();
        }
    }

    private int Pending()
    {
        lock (_lock)
        {
            return _pending.Count;
        }
    }

    private FileId? Next(CancellationToken pass)
    {
        lock (_lock)
        {
            if (_session.IsPulled)
            {
                _open.Clear();
                _pending.Clear();
            }

            return pass.IsCancellationRequested ? null : _pending.First;
        }
    }

    /// <summary>Decides under the lock: once a write has called the pass off, nothing of it is sent, and its file stays pending.</summary>
    private PublishDiagnosticsParams[] Settle(FileId file, Diagnostic[]? set, Snapshot snapshot, CancellationToken pass)
    {
        lock (_lock)
        {
            if (pass.IsCancellationRequested)
            {
                return [];
            }

            var edited = _pending.Remove(file);
            if (set is null)
            {
                return [];
            }

            var version = _session.Features.DiagnosticVersions ? snapshot.Documents.VersionOf(file) : null;
            return _sent.Exchange(file, new PublishDiagnosticsParams(snapshot.Documents.UriOf(file), set, version), edited);
        }
    }

    /// <summary>Not awaited: a client that is slow to answer must not hold up findings.</summary>
    private void Refresh(CancellationToken pass)
    {
        bool everything;
        lock (_lock)
        {
            if (pass.IsCancellationRequested || (!_refresh && !_reportsStale))
            {
                return;
            }

            everything = _refresh;
            (_refresh, _reportsStale) = (false, false);
        }

        var (client, features) = (_session.Client, _session.Features);
        foreach (var report in _session.Reports.Uris)
        {
            _ = client.RefreshReportAsync(report);
        }

        if (!everything)
        {
            return;
        }

        Ask(features.InlayHintRefresh, client.RefreshInlayHintsAsync);
        Ask(features.SemanticTokensRefresh, client.RefreshSemanticTokensAsync);
        Ask(features.CodeLensRefresh, client.RefreshCodeLensesAsync);
        Ask(features.DiagnosticRefresh && _session.IsPulled, client.RefreshDiagnosticsAsync);

        static void Ask(bool isTaken, Func<Task> ask)
        {
            if (isTaken)
            {
                _ = ask();
            }
        }
    }
}
