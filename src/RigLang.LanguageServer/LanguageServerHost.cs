using System.IO.Pipelines;
using PolyType;
using RigLang.Editing;
using RigLang.LanguageServer.Handlers;
using RigLang.LanguageServer.Wire;
using StreamJsonRpc;

namespace RigLang.LanguageServer;

/// <summary>The language server: speaks the Language Server Protocol over a pair of streams until one side ends it.</summary>
public static class LanguageServerHost
{
    /// <summary>How long the end waits for answers that are owed and for a client that doesn't read.</summary>
    internal static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>
    /// Serves one client. Ends on <c>exit</c>, at the end of the input, when the client's process ends, when the framing of the input is broken beyond repair,
    /// or when canceled; what is being written then is written out. Does not throw for anything that arrives. The streams stay open.
    /// </summary>
    /// <param name="input">Where messages come from.</param>
    /// <param name="output">Where messages go; nothing else may be written there.</param>
    /// <param name="workspace">Makes the workspace, once, with the first thing that needs it.</param>
    /// <param name="options">What the program has to say.</param>
    /// <param name="cancel">Ends the server.</param>
    /// <returns>The code for the process to end with: 0 after <c>shutdown</c>, else 1.</returns>
    public static async Task<int> RunAsync(
        Stream input, Stream output, Func<IEditorWorkspace> workspace, LanguageServerOptions options, CancellationToken cancel)
    {
        var session = new Session(workspace, options);
        var owed = new AnswersOwed();
        var incoming = new Pipe();
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        _ = PumpAsync(input, incoming.Writer, stop.Token);
        var writer = PipeWriter.Create(output, new StreamPipeWriterOptions(leaveOpen: true));
        var rpc = new LspConnection(new LspMessageHandler(writer, incoming.Reader, new LspFormatter(), owed), session.Lifecycle, owed, session.Log, session.Trace);
        session.Client.Attach(rpc);
        AddHandlers(rpc, session);
        rpc.StartListening();

        await Task.WhenAny(rpc.Completion, session.ExitRequested, Task.Delay(Timeout.Infinite, stop.Token)).ConfigureAwait(false);

        session.Writes.Close();
        await owed.SettledAsync(Patience).ConfigureAwait(false);
        await session.DisposeAsync().ConfigureAwait(false);
        rpc.Dispose();
        await rpc.Completion.WaitAsync(Patience, CancellationToken.None).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        await stop.CancelAsync().ConfigureAwait(false);
        return session.Lifecycle.ExitCode;
    }

    private static void AddHandlers(JsonRpc rpc, Session session)
    {
        Add(rpc, new LifecycleHandler(session));
        Add(rpc, new DocumentHandler(session));
        Add(rpc, new WorkspaceHandler(session));
        Add(rpc, new HoverHandler(session));
        Add(rpc, new CompletionHandler(session));
        Add(rpc, new NavigationHandler(session));
        Add(rpc, new SignatureHandler(session));
        Add(rpc, new NameHandler(session));
        Add(rpc, new SelectionHandler(session));
        Add(rpc, new LinkHandler(session));
        Add(rpc, new OutlineHandler(session));
        Add(rpc, new FoldingHandler(session));
        Add(rpc, new InlayHintHandler(session));
        Add(rpc, new SemanticTokensHandler(session));
        Add(rpc, new FormattingHandler(session));
        Add(rpc, new CodeActionHandler(session));
        Add(rpc, new PullHandler(session));
        Add(rpc, new LensHandler(session));
        Add(rpc, new ReportHandler(session));
    }

    private static void Add<T>(JsonRpc rpc, T handler)
        where T : class, IShapeable<T> => rpc.AddLocalRpcTarget(RpcTargetMetadata.FromShape<T>(), handler, null);

    /// <summary>
    /// Reads ahead into a pipe of ours. The console's input can't be called off while it waits, a pipe can; and so the server can end while its input is still open.
    /// </summary>
    private static async Task PumpAsync(Stream input, PipeWriter incoming, CancellationToken stop)
    {
        try
        {
            await input.CopyToAsync(incoming, stop).ConfigureAwait(false);
            await incoming.CompleteAsync().ConfigureAwait(false);
        }
        catch (Exception lost) when (lost is IOException or ObjectDisposedException or OperationCanceledException or InvalidOperationException)
        {
            await incoming.CompleteAsync().ConfigureAwait(false);
        }
    }
}
