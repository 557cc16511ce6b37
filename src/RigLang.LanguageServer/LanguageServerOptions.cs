using RigLang.Editing;
using RigLang.Syntax.Checks;

namespace RigLang.LanguageServer;

/// <summary>What the program tells its language server.</summary>
public sealed record LanguageServerOptions
{
    /// <summary>Told to the client.</summary>
    public required string Version { get; init; }

    /// <summary>The address of a check's page, or null when it has none; without this no diagnostic carries a link.</summary>
    public Func<CheckDeclaration, string?>? CheckPage { get; init; }

    /// <summary>Ends when the process with this id has ended. The client's process is watched with it, so that no server outlives its editor.</summary>
    public Func<int, CancellationToken, Task> ProcessEnd { get; init; } = ParentProcess.EndAsync;

    /// <summary>The settings changed. Called between writes, so the workspace may be changed.</summary>
    public Action<IEditorWorkspace, ServerSettings>? OnSettings { get; init; }

    /// <summary>Something failed that shouldn't; the client has been told in one line. Called from any thread.</summary>
    public Action<Exception>? OnFailure { get; init; }
}
