using System.Diagnostics;

namespace RigLang.Cli.Tests;

/// <summary>A folder under real version control, in a folder of its own.</summary>
public sealed class GitFolder : IDisposable
{
    private readonly Cli cli = new();

    public GitFolder()
    {
        Directory.Delete(Path.Combine(cli.Folder, ".git"));
        Git("init", "--quiet", "--initial-branch", "main");
    }

    public string Folder => cli.Folder;

    public GitFolder With(string path, string text)
    {
        cli.With(path, text);
        return this;
    }

    public GitFolder Committed(string message)
    {
        Git("add", "--all");
        Git("commit", "--quiet", "--allow-empty", "--message", message);
        return this;
    }

    /// <summary>Runs git, with a person and a clock of the test's own.</summary>
    public string Git(params string[] arguments)
    {
        var start = new ProcessStartInfo("git") { WorkingDirectory = cli.Folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in (string[])["-c", "user.name=Test", "-c", "user.email=test@example.org", "-c", "commit.gpgSign=false", "-c", "core.autocrlf=false", .. arguments])
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["GIT_AUTHOR_DATE"] = start.Environment["GIT_COMMITTER_DATE"] = "2026-10-01T12:00:00Z";
        start.Environment["GIT_CONFIG_GLOBAL"] = start.Environment["GIT_CONFIG_SYSTEM"] = "/dev/null";
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output.Trim() : throw new InvalidOperationException($"git {string.Join(' ', arguments)}: {error}");
    }

    public Task<Run> Run(params string[] arguments) => cli.Run(arguments);

    public void Dispose()
    {
        // Stored objects are read-only, which keeps some systems from deleting them.
        foreach (var file in Directory.EnumerateFiles(Path.Combine(cli.Folder, ".git"), "*", SearchOption.AllDirectories))
        {
            File.SetAttributes(file, FileAttributes.Normal);
        }

        cli.Dispose();
    }
}
