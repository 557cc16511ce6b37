using System.Threading.Channels;
using RigLang.Editing;
using RigLang.LanguageServer.Wire;
using RigLang.Model.Files;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Queue;

/// <summary>
/// The order of things. Writes run alone, one after the other as they came. A read gets the state as it is at its place in the order, and runs beside whatever follows.
/// The workspace itself is made with the first thing that needs it.
/// </summary>
internal sealed class RequestQueue : IAsyncDisposable
{
    private readonly Channel<Item> _items = Channel.CreateUnbounded<Item>(new UnboundedChannelOptions { SingleReader = true });
    private readonly RunningReads _running = new();
    private readonly CancellationTokenSource _end = new();
    private readonly Action<WriteDone> _written;
    private readonly Action<string, Exception> _failed;
    private readonly Task _loop;

    internal RequestQueue(Func<IEditorWorkspace> workspace, Action<WriteDone> written, Action<string, Exception> failed)
    {
        (_written, _failed) = (written, failed);
        _loop = Task.Run(() => RunAsync(workspace));
    }

    /// <summary>Queues a change. A change that throws is logged and what follows is carried out.</summary>
    /// <param name="name">What it is called in the log.</param>
    /// <param name="about">The file whose text it changes, if it is one.</param>
    internal void Write(string name, FileId? about, Action<Writer> change) => _items.Writer.TryWrite(new Item(
        writer => Carry(name, about, change, writer), failure => _failed(name, failure)));

    /// <summary>Queues a question. Canceled through the token it is canceled; superseded it fails with "content modified".</summary>
    internal Task<T> ReadAsync<T>(FileId file, ReadSort sort, Func<Snapshot, CancellationToken, T> read, CancellationToken cancel)
    {
        var answer = new TaskCompletionSource<T>(TaskCreationOptions.RunContinuationsAsynchronously);
        // Cancelled while it waits, it is answered then and not at its turn.
        var waiting = cancel.Register(() => answer.TrySetCanceled(cancel));
        var item = new Item(Start, failure => answer.TrySetException(failure));
        if (!_items.Writer.TryWrite(item))
        {
            answer.TrySetCanceled(_end.Token);
        }

        return answer.Task;

        void Start(Writer writer)
        {
            waiting.Dispose();
            if (cancel.IsCancellationRequested)
            {
                answer.TrySetCanceled(cancel);
                return;
            }

            var snapshot = writer.Snapshot();
            var superseded = sort == ReadSort.OfText ? _running.Begin(file) : null;
            _ = Task.Run(() => Answer(answer, read, snapshot, superseded, cancel), CancellationToken.None);
        }
    }

    public async ValueTask DisposeAsync()
    {
        _items.Writer.TryComplete();
        await _end.CancelAsync().ConfigureAwait(false);
        await _loop.WaitAsync(LanguageServerHost.Patience).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    private async Task RunAsync(Func<IEditorWorkspace> workspace)
    {
        Writer? writer = null;
        await foreach (var item in _items.Reader.ReadAllAsync().ConfigureAwait(false))
        {
            if (_end.IsCancellationRequested)
            {
                return;
            }

            try
            {
                item.Run(writer ??= new Writer(workspace()));
            }
            catch (Exception failure)
            {
                item.Fail(failure);
            }
        }
    }

    private void Carry(string name, FileId? about, Action<Writer> change, Writer writer)
    {
        try
        {
            change(writer);
        }
        catch (Exception failure)
        {
            _failed(name, failure);
        }

        if (about is { } file)
        {
            _running.Supersede(file);
        }

        _written(new WriteDone(writer.Snapshot(), writer.Workspace.TakeTouched(), about));
    }

    private void Answer<T>(
        TaskCompletionSource<T> answer, Func<Snapshot, CancellationToken, T> read, Snapshot snapshot, CancellationTokenSource? superseded, CancellationToken cancel)
    {
        using var any = CancellationTokenSource.CreateLinkedTokenSource(cancel, _end.Token, superseded?.Token ?? CancellationToken.None);
        try
        {
            var result = read(snapshot, any.Token);
            any.Token.ThrowIfCancellationRequested();
            answer.TrySetResult(result);
        }
        catch (OperationCanceledException) when (superseded is { IsCancellationRequested: true } && !cancel.IsCancellationRequested)
        {
            answer.TrySetException(new LocalRpcException("the text has changed since") { ErrorCode = ErrorCodes.ContentModified });
        }
        catch (OperationCanceledException) when (any.IsCancellationRequested)
        {
            answer.TrySetCanceled(any.Token);
        }
        catch (Exception failure)
        {
            answer.TrySetException(failure);
        }
        finally
        {
            _running.End(superseded);
        }
    }

    /// <summary>A write, or the start of a read; and whom to tell when it could not even begin.</summary>
    private readonly record struct Item(Action<Writer> Run, Action<Exception> Fail);
}
