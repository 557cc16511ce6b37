namespace RigLang.LanguageServer.Wire;

/// <summary>Which messages are taken when: nothing but <c>initialize</c> first, that once, and after <c>shutdown</c> nothing but <c>exit</c>.</summary>
internal sealed class Lifecycle
{
    private enum Phase
    {
        Waiting,
        Running,
        ShutDown,
    }

    private volatile Phase _phase = Phase.Waiting;

    /// <summary>The client has said hello, so it may be spoken to.</summary>
    internal bool IsIntroduced => _phase != Phase.Waiting;

    /// <summary>The code for the process to end with.</summary>
    internal int ExitCode => _phase == Phase.ShutDown ? 0 : 1;

    /// <summary>Null when the message may pass, else why not. Called for each message in the order of arrival.</summary>
    internal (int Code, string Message)? Refuse(string method)
    {
        if (method == "exit" || method.StartsWith("$/", StringComparison.Ordinal))
        {
            return null;
        }

        switch (_phase, method)
        {
            case (Phase.Waiting, "initialize"):
                _phase = Phase.Running;
                return null;
            case (Phase.Waiting, _):
                return (ErrorCodes.ServerNotInitialized, $"{method} came before initialize");
            case (Phase.Running, "initialize"):
                return (ErrorCodes.InvalidRequest, "initialize came a second time");
            case (Phase.Running, "shutdown"):
                _phase = Phase.ShutDown;
                return null;
            case (Phase.Running, _):
                return null;
            default:
                return (ErrorCodes.InvalidRequest, $"{method} came after shutdown");
        }
    }
}
