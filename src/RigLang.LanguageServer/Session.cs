using System.Text.Json;
using RigLang.Editing;
using RigLang.LanguageServer.Client;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Publishing;
using RigLang.LanguageServer.Queue;
using RigLang.LanguageServer.Translate;
using RigLang.LanguageServer.Wire;
using RigLang.Model.Files;

namespace RigLang.LanguageServer;

/// <summary>What belongs to one client from its first message to its last. The handlers share it.</summary>
internal sealed class Session : IAsyncDisposable
{
    private readonly TaskCompletionSource _exit = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly CancellationTokenSource _end = new();
    private int _opened;
    private volatile ClientFeatures _features = new();
    private volatile ServerSettings _settings = new();

    internal Session(Func<IEditorWorkspace> workspace, LanguageServerOptions options)
    {
        Options = options;
        Log = new ClientLog(Client, Lifecycle, options.OnFailure);
        Diagnostics = new DiagnosticTranslator(() => Features, options.CheckPage);
        Trace = new ClientTrace(Client);
        Publisher = new Publisher(this);
        Queue = new RequestQueue(workspace, Written, Log.Failure);
    }

    internal LanguageServerOptions Options { get; }

    internal Lifecycle Lifecycle { get; } = new();

    internal ClientLink Client { get; } = new();

    internal ClientLog Log { get; }

    internal ClientTrace Trace { get; }

    /// <summary>The changes, for those who wait for one.</summary>
    internal WriteSignal Writes { get; } = new();

    internal AskedReports Reports { get; } = new();

    /// <summary>
    /// Findings are fetched by the client instead of sent to it. Only one of the two is done, since clients show both: fetched where the client asks for that by
    /// its settings at the start, or can't be sent any.
    /// </summary>
    internal bool IsPulled { get; private set; }

    internal DiagnosticTranslator Diagnostics { get; }

    internal Publisher Publisher { get; }

    internal RequestQueue Queue { get; }

    internal WorkspaceFolders Folders { get; } = new();

    internal ClientFeatures Features
    {
        get => _features;
        set => _features = value;
    }

    internal ServerSettings Settings => _settings;

    /// <summary>Ends when the client, or the end of its process, asks the server to end.</summary>
    internal Task ExitRequested => _exit.Task;

    internal void RequestExit() => _exit.TrySetResult();

    /// <summary>Ends the server when the client's process ends.</summary>
    internal async Task FollowAsync(int process)
    {
        try
        {
            await Options.ProcessEnd(process, _end.Token).ConfigureAwait(false);
            RequestExit();
        }
        catch (OperationCanceledException)
        {
        }
    }

    /// <summary>Takes what the client says of itself at the start; the workspace is not touched yet.</summary>
    internal void Begin(JsonElement? settings)
    {
        _settings = ServerSettings.Read(settings, _settings);
        IsPulled = Features.PulledDiagnostics && (ServerSettings.WantsPulledDiagnostics(settings) || !Features.PublishedDiagnostics);
    }

    /// <summary>
    /// Opens the folders, once: with <c>initialized</c>, or with the first document of a client that forgets to send it. Not earlier, since a server may not
    /// send findings before <c>initialize</c> is answered.
    /// </summary>
    internal void Open()
    {
        if (Interlocked.Exchange(ref _opened, 1) == 0)
        {
            var paths = Folders.Paths;
            Queue.Write("opening the workspace", null, writer =>
            {
                Options.OnSettings?.Invoke(writer.Workspace, _settings);
                writer.Workspace.SetFolders(paths);
            });
        }
    }

    /// <summary>Asks the client to watch the files that matter and to tell when settings change, and reads the settings, as far as it can do that.</summary>
    internal async Task RegisterAsync()
    {
        if (Features.RegisterWatchedFiles)
        {
            var watchers = new RegisterOptions(Watchers: [new("**/*.rig"), new("**/*.gpx")]);
            _ = Client.RegisterAsync(new Registration("watched-files", "workspace/didChangeWatchedFiles", watchers));
        }

        if (Features.RegisterConfiguration)
        {
            var section = new RegisterOptions(Section: ServerSettings.Section);
            _ = Client.RegisterAsync(new Registration("settings", "workspace/didChangeConfiguration", section));
        }

        await PullSettingsAsync().ConfigureAwait(false);
    }

    /// <summary>Asks the client for the settings, if it can be asked.</summary>
    internal async Task PullSettingsAsync()
    {
        if (Features.Configuration)
        {
            Apply(await Client.ConfigurationAsync(ServerSettings.Section).ConfigureAwait(false));
        }
    }

    /// <summary>Takes settings over in their place in the order of writes.</summary>
    internal void Apply(JsonElement? settings) => Queue.Write("settings", null, writer =>
    {
        var now = ServerSettings.Read(settings, _settings);
        if (now != _settings)
        {
            _settings = now;
            Options.OnSettings?.Invoke(writer.Workspace, now);
            Publisher.RefreshAll();
        }
    });

    /// <summary>A question about a document.</summary>
    internal Task<T> AskAsync<T>(string uri, ReadSort sort, Func<Snapshot, FileId, CancellationToken, T> read, CancellationToken cancel)
    {
        var file = FileUri.Decode(uri);
        return Queue.ReadAsync(file, sort, (snapshot, token) => read(snapshot, file, token), cancel);
    }

    /// <summary>A question about the workspace as a whole. Edits don't break it off.</summary>
    internal Task<T> AskAsync<T>(Func<Snapshot, CancellationToken, T> read, CancellationToken cancel) => Queue.ReadAsync(default, ReadSort.Lasting, read, cancel);

    private void Written(WriteDone write)
    {
        Publisher.Post(write);
        Writes.Pulse();
    }

    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync().ConfigureAwait(false);
        await Queue.DisposeAsync().ConfigureAwait(false);
        await Publisher.DisposeAsync().ConfigureAwait(false);
    }
}
