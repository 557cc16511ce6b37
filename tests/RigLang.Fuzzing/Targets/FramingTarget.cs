using System.Text;
using System.Text.Json;
using RigLang.Editing;
using RigLang.LanguageServer;
using RigLang.Model.Files;

namespace RigLang.Fuzzing.Targets;

/// <summary>
/// The server's input: whatever bytes arrive, it ends at their end with a code, writes whole messages only, and each of them is JSON-RPC.
/// </summary>
internal sealed class FramingTarget : IFuzzTarget
{
    public string Name => "framing";

    public void Run(ReadOnlySpan<byte> input)
    {
        using var arriving = new MemoryStream(input.ToArray());
        using var leaving = new MemoryStream();
        var options = new LanguageServerOptions { Version = "0", ProcessEnd = (_, cancel) => Task.Delay(Timeout.Infinite, cancel) };
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        var code = LanguageServerHost.RunAsync(arriving, leaving, () => new EditorWorkspace(new MemoryFileSource([("/rigs/none.rig", "")])), options, patience.Token).GetAwaiter().GetResult();
        Promise.Holds(!patience.IsCancellationRequested, "the server ends at the end of its input");
        Promise.Holds(code is 0 or 1, "the server ends with a code that the protocol knows");
        ReadMessages(leaving.ToArray());
    }

    private static void ReadMessages(ReadOnlySpan<byte> written)
    {
        while (!written.IsEmpty)
        {
            var end = written.IndexOf("\r\n\r\n"u8);
            Promise.Holds(end >= 0, "a header ends with an empty line");
            var header = Encoding.ASCII.GetString(written[..end]).Split("\r\n").Single(line => line.StartsWith("Content-Length: ", StringComparison.Ordinal));
            var length = int.Parse(header["Content-Length: ".Length..], System.Globalization.CultureInfo.InvariantCulture);
            written = written[(end + 4)..];
            Promise.Holds(length <= written.Length, "a message is written whole");
            using var message = JsonDocument.Parse(written[..length].ToArray());
            Promise.Holds(message.RootElement.GetProperty("jsonrpc").GetString() == "2.0", "a message is JSON-RPC 2.0");
            written = written[length..];
        }
    }
}
