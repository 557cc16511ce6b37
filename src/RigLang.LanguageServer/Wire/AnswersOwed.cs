namespace RigLang.LanguageServer.Wire;

/// <summary>Counts the requests whose answer isn't written yet, so that the end can wait for them.</summary>
internal sealed class AnswersOwed
{
    private readonly Lock _lock = new();
    private int _count;
    private TaskCompletionSource? _settled;

    internal void Add()
    {
        lock (_lock)
        {
            _count++;
        }
    }

    internal void Settle()
    {
        lock (_lock)
        {
            if (--_count == 0)
            {
                _settled?.TrySetResult();
            }
        }
    }

    /// <summary>Ends when none is owed, or after the time given.</summary>
    internal Task SettledAsync(TimeSpan atMost)
    {
        lock (_lock)
        {
            if (_count == 0)
            {
                return Task.CompletedTask;
            }

            _settled ??= new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
            return Task.WhenAny(_settled.Task, Task.Delay(atMost));
        }
    }
}
