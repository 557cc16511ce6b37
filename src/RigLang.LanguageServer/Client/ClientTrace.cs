using System.Diagnostics;
using System.Globalization;
using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Client;

/// <summary>Tells the client what the server does with each message, as far as the client asked for that.</summary>
internal sealed class ClientTrace(ClientLink client)
{
    private volatile string _value = "off";

    internal bool IsOn => _value != "off";

    /// <summary>"off", "messages" or "verbose"; anything else changes nothing.</summary>
    internal void Set(string? value)
    {
        if (value is "off" or "messages" or "verbose")
        {
            _value = value;
        }
    }

    /// <param name="started">A <see cref="Stopwatch"/> time stamp.</param>
    /// <param name="problem">Null when all went well.</param>
    internal void Done(string method, bool isRequest, long started, string? problem)
    {
        var took = Stopwatch.GetElapsedTime(started).TotalMilliseconds.ToString("0.0", CultureInfo.InvariantCulture);
        var what = problem is not null ? "failed" : isRequest ? "answered" : "taken";
        _ = client.TraceAsync(new LogTraceParams($"{method} {what} after {took} ms", _value == "verbose" ? problem : null));
    }
}
