using System.Text.Json;

namespace RigLang.LanguageServer.Protocol;

internal sealed record InitializeParams(
    JsonElement Capabilities,
    int? ProcessId = null,
    string? RootUri = null,
    string? RootPath = null,
    WorkspaceFolder[]? WorkspaceFolders = null,
    JsonElement? InitializationOptions = null,
    string? Trace = null);

internal sealed record InitializeResult(ServerCapabilities Capabilities, ServerInfo ServerInfo);

internal sealed record ServerInfo(string Name, string Version);

internal sealed record WorkspaceFolder(string Uri, string Name);

internal sealed record DidChangeWorkspaceFoldersParams(WorkspaceFoldersChange Event);

internal sealed record WorkspaceFoldersChange(WorkspaceFolder[] Added, WorkspaceFolder[] Removed);

internal sealed record DidChangeConfigurationParams(JsonElement Settings = default);

internal sealed record ConfigurationParams(ConfigurationItem[] Items);

internal sealed record ConfigurationItem(string Section);

internal sealed record DidChangeWatchedFilesParams(FileEvent[] Changes);

/// <summary>Created (1), changed (2) and deleted (3) all mean: look again.</summary>
internal sealed record FileEvent(string Uri, int Type);

internal sealed record RegistrationParams(Registration[] Registrations);

internal sealed record Registration(string Id, string Method, RegisterOptions RegisterOptions);

/// <summary>The options of the two kinds of registration made here: watched files, or a section of the settings.</summary>
internal sealed record RegisterOptions(FileSystemWatcher[]? Watchers = null, string? Section = null);

internal sealed record FileSystemWatcher(string GlobPattern);

internal sealed record LogMessageParams(int Type, string Message);
