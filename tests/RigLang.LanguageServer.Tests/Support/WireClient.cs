using System.Collections.Concurrent;
using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace RigLang.LanguageServer.Tests.Support;

/// <summary>
/// A client written by hand against the bytes, so that nothing of the server's own reading and writing is believed. Keeps everything it was sent, in order.
/// </summary>
internal sealed class WireClient : IAsyncDisposable
{
    private static readonly TimeSpan TooLong = TimeSpan.FromSeconds(20);
    private readonly Pipe _toServer = new();
    private readonly Pipe _fromServer = new(new PipeOptions(pauseWriterThreshold: 0));
    private readonly ConcurrentDictionary<string, TaskCompletionSource<JsonElement>> _asked = new();
    private readonly Lock _lock = new();
    private readonly List<JsonElement> _received = [];
    private readonly Dictionary<string, int> _taken = [];
    private TaskCompletionSource _more = NewSignal();
    private readonly SemaphoreSlim _sending = new(1, 1);
    private bool _ended;
    private int _ids;
    private Task _reading = Task.CompletedTask;

    internal Stream ServerInput => _toServer.Reader.AsStream();

    internal Stream ServerOutput => _fromServer.Writer.AsStream();

    /// <summary>What the client answers to the server's own requests.</summary>
    internal Func<string, JsonElement, JsonNode?> Answer { get; set; } = (_, _) => null;

    /// <summary>Everything received so far.</summary>
    internal IReadOnlyList<JsonElement> Received
    {
        get
        {
            lock (_lock)
            {
                return [.. _received];
            }
        }
    }

    internal void Start() => _reading = Task.Run(ReadAllAsync);

    /// <summary>Sends a request and gives the whole response.</summary>
    internal Task<JsonElement> RequestAsync(string method, object? parameters = null) => Request(method, parameters).Response;

    /// <summary>Sends a request and gives its id at once.</summary>
    internal (int Id, Task<JsonElement> Response) Request(string method, object? parameters = null)
    {
        var id = Interlocked.Increment(ref _ids);
        var answer = Expect(id.ToString(CultureInfo.InvariantCulture));
        SendAsync(new { jsonrpc = "2.0", id, method, @params = parameters ?? new { } }).GetAwaiter().GetResult();
        return (id, answer);
    }

    /// <summary>The result of a request that must succeed.</summary>
    internal async Task<JsonElement> ResultAsync(string method, object? parameters = null)
    {
        var response = await RequestAsync(method, parameters);
        response.TryGetProperty("error", out var error).Should().BeFalse("{0} should be answered, not {1}", method, error);
        return response.GetProperty("result");
    }

    /// <summary>The error code of a request that must fail.</summary>
    internal async Task<int> ErrorAsync(string method, object? parameters = null) => (await RequestAsync(method, parameters)).GetProperty("error").GetProperty("code").GetInt32();

    internal async Task NotifyAsync(string method, object? parameters = null) => await SendAsync(new { jsonrpc = "2.0", method, @params = parameters ?? new { } });

    /// <summary>The next notification or request of this method that wasn't taken yet; waits for it.</summary>
    internal async Task<JsonElement> NextAsync(string method)
    {
        while (true)
        {
            Task more;
            lock (_lock)
            {
                var ofMethod = _received.Where(m => m.TryGetProperty("method", out var name) && name.ValueEquals(method)).ToArray();
                var taken = _taken.GetValueOrDefault(method);
                if (ofMethod.Length > taken)
                {
                    _taken[method] = taken + 1;
                    return ofMethod[taken].TryGetProperty("params", out var parameters) ? parameters : default;
                }

                more = _more.Task;
            }

            await more.WaitAsync(TooLong);
        }
    }

    /// <summary>The answer to a message sent with an id of the test's own.</summary>
    internal Task<JsonElement> Expect(string id) =>
        _asked.GetOrAdd(id, _ => new TaskCompletionSource<JsonElement>(TaskCreationOptions.RunContinuationsAsynchronously)).Task.WaitAsync(TooLong);

    internal Task SendAsync(object message) => SendBodyAsync(JsonSerializer.Serialize(message));

    internal Task SendBodyAsync(string body)
    {
        var bytes = Encoding.UTF8.GetBytes(body);
        return SendRawAsync([.. Encoding.ASCII.GetBytes($"Content-Length: {bytes.Length}\r\n\r\n"), .. bytes]);
    }

    internal Task SendRawAsync(byte[] bytes) => AloneAsync(async () => await _toServer.Writer.WriteAsync(bytes));

    /// <summary>Nothing is sent after this, not even an answer.</summary>
    internal Task EndInputAsync() => AloneAsync(async () =>
    {
        _ended = true;
        await _toServer.Writer.CompleteAsync();
    });

    public async ValueTask DisposeAsync()
    {
        await EndInputAsync();
        await _fromServer.Writer.CompleteAsync();
        await _reading.WaitAsync(TooLong);
    }

    private async Task AloneAsync(Func<Task> send)
    {
        await _sending.WaitAsync();
        try
        {
            if (!_ended)
            {
                await send();
            }
        }
        finally
        {
            _sending.Release();
        }
    }

    private static TaskCompletionSource NewSignal() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    private async Task ReadAllAsync()
    {
        using var stream = _fromServer.Reader.AsStream();
        while (await ReadBodyAsync(stream) is { } body)
        {
            var message = JsonDocument.Parse(body).RootElement;
            lock (_lock)
            {
                _received.Add(message);
                var more = _more;
                _more = NewSignal();
                more.SetResult();
            }

            if (!message.TryGetProperty("id", out var id))
            {
                continue;
            }

            if (message.TryGetProperty("method", out var method))
            {
                var answer = Answer(method.GetString()!, message.TryGetProperty("params", out var parameters) ? parameters : default);
                await SendBodyAsync(new JsonObject { ["jsonrpc"] = "2.0", ["id"] = JsonNode.Parse(id.GetRawText()), ["result"] = answer }.ToJsonString());
            }
            else
            {
                _ = Expect(id.ToString());
                _asked[id.ToString()].TrySetResult(message);
            }
        }
    }

    /// <summary>Header fields may come in any order; each line must end in CR LF.</summary>
    private static async Task<byte[]?> ReadBodyAsync(Stream stream)
    {
        var length = -1;
        while (true)
        {
            var line = new StringBuilder();
            while (!line.ToString().EndsWith("\r\n", StringComparison.Ordinal))
            {
                var one = new byte[1];
                if (await stream.ReadAsync(one) == 0)
                {
                    return line.Length == 0 ? null : throw new InvalidDataException("the stream ended inside a header");
                }

                line.Append((char)one[0]);
            }

            if (line.Length == 2)
            {
                break;
            }

            var field = line.ToString().Split(':', 2);
            if (field[0] == "Content-Length")
            {
                length = int.Parse(field[1].Trim(), CultureInfo.InvariantCulture);
            }
        }

        var body = new byte[length];
        await stream.ReadExactlyAsync(body);
        return body;
    }
}
