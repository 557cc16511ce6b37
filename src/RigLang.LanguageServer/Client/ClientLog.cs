using RigLang.LanguageServer.Wire;

namespace RigLang.LanguageServer.Client;

/// <summary>The server's log, shown by the client: one line a message, no stack traces. Those go to <see cref="LanguageServerOptions.OnFailure"/>.</summary>
internal sealed class ClientLog(ClientLink client, Lifecycle lifecycle, Action<Exception>? onFailure)
{
    internal void Failure(string what, Exception failure)
    {
        onFailure?.Invoke(failure);
        Say(1, $"{what} failed: {failure.GetType().Name}: {failure.Message}");
    }

    internal void Warning(string message) => Say(2, message);

    private void Say(int type, string message)
    {
        if (lifecycle.IsIntroduced)
        {
            _ = client.LogAsync(type, message);
        }
    }
}
