using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Client;

/// <summary>
/// How far a long piece of work is, shown by clients that can. The client is asked first whether it wants to show it; nothing waits for its answer, and what
/// is said before it has come is left out.
/// </summary>
internal sealed class PassProgress : IAsyncDisposable
{
    private readonly ClientLink _client;
    private readonly string _token;
    private readonly Task<bool> _isShown;
    private Task _said = Task.CompletedTask;
    private uint _last;

    private PassProgress(ClientLink client, string token, string title)
    {
        (_client, _token) = (client, token);
        _isShown = BeginAsync(title);
    }

    internal static PassProgress Begin(ClientLink client, long number, string title) => new(client, $"riglang-{number}", title);

    internal void Report(int done, int of)
    {
        var percentage = (uint)(100L * done / Math.Max(1, of));
        if (percentage > _last && _isShown is { IsCompletedSuccessfully: true, Result: true })
        {
            _last = percentage;
            _said = _client.ProgressAsync(new ProgressParams(_token, new WorkDoneProgress("report", Message: $"{done} of {of}", Percentage: percentage)));
        }
    }

    /// <summary>What was begun is ended, even if the client's answer comes late. Not waited for.</summary>
    public ValueTask DisposeAsync()
    {
        _ = EndAsync();
        return ValueTask.CompletedTask;
    }

    private async Task<bool> BeginAsync(string title)
    {
        if (!await _client.CreateProgressAsync(_token).ConfigureAwait(false))
        {
            return false;
        }

        await _client.ProgressAsync(new ProgressParams(_token, new WorkDoneProgress("begin", title, Percentage: 0))).ConfigureAwait(false);
        return true;
    }

    private async Task EndAsync()
    {
        if (await _isShown.ConfigureAwait(false))
        {
            await _said.ConfigureAwait(false);
            await _client.ProgressAsync(new ProgressParams(_token, new WorkDoneProgress("end"))).ConfigureAwait(false);
        }
    }
}
