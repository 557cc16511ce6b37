using System.Diagnostics;
using System.Text;

namespace RigLang.EndToEnd;

/// <summary>What a run of the program left behind.</summary>
/// <param name="Output">Standard output, as UTF-8.</param>
/// <param name="Errors">Standard error.</param>
public sealed record Outcome(int ExitCode, string Output, string Errors)
{
    public string Everything => Output + Errors;
}

/// <summary>Runs the built <c>riglang</c> as a process of its own, as a user's shell would.</summary>
public static class Riglang
{
    /// <summary>Nothing here may take longer; a run that does is ended, and its test fails.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    // Built beside the tests, since they refer to it.
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "riglang.dll");

    public static Task<Outcome> RunAsync(string folder, params string[] arguments) => RunAsync(folder, input: "", arguments);

    public static async Task<Outcome> RunAsync(string folder, string input, string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(false),
            StandardOutputEncoding = new UTF8Encoding(false),
            StandardErrorEncoding = new UTF8Encoding(false),
        };
        start.ArgumentList.Add(Program);
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start)!;
        using var late = new CancellationTokenSource(Patience);
        try
        {
            var output = process.StandardOutput.ReadToEndAsync(late.Token);
            var errors = process.StandardError.ReadToEndAsync(late.Token);
            await WriteAsync(process, input, late.Token);
            await process.WaitForExitAsync(late.Token);
            return new Outcome(process.ExitCode, await output, await errors);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"riglang {string.Join(' ', arguments)} didn't end within {Patience}.");
        }
    }

    private static async Task WriteAsync(Process process, string input, CancellationToken cancel)
    {
        try
        {
            await process.StandardInput.WriteAsync(input.AsMemory(), cancel);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It ended without reading everything; its exit code says why.
        }
    }
}
