using System.Diagnostics;

namespace RigLang.LanguageServer;

/// <summary>Watches the process that started the server.</summary>
internal static class ParentProcess
{
    /// <summary>Ends when the process has, at once when there is none with this id. A process that may not be watched is never seen to end.</summary>
    internal static async Task EndAsync(int id, CancellationToken cancel)
    {
        try
        {
            using var process = Process.GetProcessById(id);
            await process.WaitForExitAsync(cancel).ConfigureAwait(false);
        }
        catch (ArgumentException)
        {
            // No such process: it has ended already.
        }
        catch (Exception denied) when (denied is System.ComponentModel.Win32Exception or InvalidOperationException or NotSupportedException)
        {
            await Task.Delay(Timeout.Infinite, cancel).ConfigureAwait(false);
        }
    }
}
