namespace RigLang.LanguageServer.Queue;

/// <summary>Lets a question wait for the next change. Ends for good when the session does, so that nobody waits for what won't come.</summary>
internal sealed class WriteSignal
{
    private readonly Lock _lock = new();
    private TaskCompletionSource _next = New();
    private long _count;
    private bool _isClosed;

    /// <summary>Changes so far.</summary>
    internal long Count
    {
        get
        {
            lock (_lock)
            {
                return _count;
            }
        }
    }

    internal void Pulse()
    {
        TaskCompletionSource next;
        lock (_lock)
        {
            _count++;
            (next, _next) = (_next, New());
        }

        next.TrySetResult();
    }

    internal void Close()
    {
        lock (_lock)
        {
            _isClosed = true;
        }

        Pulse();
    }

    /// <summary>Comes back when there were more changes than <paramref name="seen"/>. False when the session has ended.</summary>
    internal async Task<bool> AfterAsync(long seen, CancellationToken cancel)
    {
        while (true)
        {
            Task next;
            lock (_lock)
            {
                if (_isClosed)
                {
                    return false;
                }

                if (_count > seen)
                {
                    return true;
                }

                next = _next.Task;
            }

            await next.WaitAsync(cancel).ConfigureAwait(false);
        }
    }

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
