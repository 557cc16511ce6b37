using System.ComponentModel;
using System.Diagnostics;
using System.Text;

namespace RigLang.Cli.Revisions;

/// <summary>
/// Asks the git program, and only for what is stored: nothing is fetched, no hook or filter of a repository is run, nothing is written. The program, not a library of
/// it, since whoever keeps rigs under version control has it, and it knows every format of repository that it can make.
/// </summary>
internal static class GitProgram
{
    private static readonly string[] Quiet = ["--no-optional-locks", "-c", "core.fsmonitor=false", "-c", "core.hooksPath=/dev/null", "-c", "protocol.allow=never"];

    /// <summary>Runs it to its end. What it writes must be small: lists, not files.</summary>
    /// <returns>What it wrote, and how it ended; null when there is no such program.</returns>
    public static GitAnswer? Ask(string folder, params ReadOnlySpan<string> arguments)
    {
        using var process = Start(folder, arguments);
        if (process is null)
        {
            return null;
        }

        process.StandardInput.Close();
        var trouble = process.StandardError.ReadToEndAsync();
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new GitAnswer(process.ExitCode, text, trouble.GetAwaiter().GetResult().Trim());
    }

    /// <summary>Starts it with all three streams open; null when there is no such program.</summary>
    public static Process? Start(string folder, params ReadOnlySpan<string> arguments)
    {
        var start = new ProcessStartInfo("git")
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = new UTF8Encoding(false),
            UseShellExecute = false,
            CreateNoWindow = true,
        };
        foreach (var argument in (string[])[.. Quiet, .. arguments])
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["LC_ALL"] = "C";
        start.Environment["GIT_TERMINAL_PROMPT"] = "0";
        start.Environment["GIT_NO_LAZY_FETCH"] = "1";
        try
        {
            return Process.Start(start);
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}

/// <summary>What git said.</summary>
internal sealed record GitAnswer(int Code, string Text, string Trouble)
{
    public bool IsGood => Code == 0;

    public string Line => Text.Trim('\n', '\r');
}
