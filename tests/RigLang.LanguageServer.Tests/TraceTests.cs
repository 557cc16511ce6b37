using System.Text.Json;
using RigLang.LanguageServer.Tests.Support;

namespace RigLang.LanguageServer.Tests;

/// <summary>What the server tells of its own work: traces as the client sets them, and how far a long pass is.</summary>
public class TraceTests
{
    private const string A = "file:///w/a.rig";
    private static readonly object Place = new { textDocument = new { uri = A }, position = new { line = 0, character = 0 } };

    [Fact]
    public async Task Nothing_is_traced_until_the_client_says_so_and_nothing_once_it_says_stop()
    {
        await using var server = await RunningServer.StartAsync();
        await server.Client.RequestAsync("textDocument/hover", Place);
        await server.Client.NotifyAsync("$/setTrace", new { value = "messages" });
        await server.Client.RequestAsync("textDocument/hover", Place);
        await server.Client.NotifyAsync("$/setTrace", new { value = "off" });
        await server.Client.RequestAsync("textDocument/definition", Place);
        await server.Client.ResultAsync("shutdown");

        var traced = server.Client.Received.Where(IsTrace).Select(Message).ToList();
        traced.Should().Contain(message => message.StartsWith("textDocument/hover answered after ", StringComparison.Ordinal));
        traced.Count(message => message.StartsWith("textDocument/hover", StringComparison.Ordinal)).Should().Be(1);
        traced.Should().NotContain(message => message.StartsWith("textDocument/definition", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_verbose_trace_says_what_failed()
    {
        await using var server = RunningServer.Silent();
        await server.Client.ResultAsync("initialize", new { processId = (int?)null, rootUri = (string?)null, capabilities = new { }, trace = "verbose" });
        await server.Client.NotifyAsync("initialized");
        await server.OpenAsync(A, "x");
        server.Workspace.Answers.RenameTarget = new Editing.RenameTarget(FakeAnswers.At(0, 0, 1), "x", "it is built in");
        await server.Client.ErrorAsync("textDocument/prepareRename", Place);

        while (true)
        {
            var trace = await server.Client.NextAsync("$/logTrace");
            if (trace.GetProperty("message").GetString()!.StartsWith("textDocument/prepareRename failed after ", StringComparison.Ordinal))
            {
                trace.GetProperty("verbose").GetString().Should().Be("-32803: it is built in");
                return;
            }
        }
    }

    [Fact]
    public async Task A_long_pass_is_shown_from_its_begin_to_its_end()
    {
        await using var server = await RunningServer.StartAsync(JsonDocument.Parse("""{"window":{"workDoneProgress":true}}""").RootElement);
        server.Workspace.Dependants[RunningServer.File(A)] = [.. Enumerable.Range(0, 40).Select(number => RunningServer.File($"file:///w/{number}.rig"))];
        await server.OpenAsync(A, "x");

        var token = (await server.Client.NextAsync("window/workDoneProgress/create")).GetProperty("token").GetString();
        var said = new List<JsonElement>();
        while (said.Count == 0 || said[^1].GetProperty("value").GetProperty("kind").GetString() != "end")
        {
            said.Add(await server.Client.NextAsync("$/progress"));
        }

        said.Should().OnlyContain(one => one.GetProperty("token").GetString() == token);
        said[0].GetProperty("value").GetRawText().Should().Be("""{"kind":"begin","title":"Checking rigs","percentage":0}""");
        said[1..^1].Select(one => one.GetProperty("value").GetProperty("kind").GetString()).Distinct().Should().BeSubsetOf(["report"]);
    }

    [Fact]
    public async Task A_short_pass_is_not_shown()
    {
        await using var server = await RunningServer.StartAsync(JsonDocument.Parse("""{"window":{"workDoneProgress":true}}""").RootElement);
        await server.OpenAsync(A, "x");
        await server.NextSetAsync();
        await server.Client.ResultAsync("shutdown");
        server.Client.Received.Should().NotContain(message => message.GetRawText().Contains("workDoneProgress", StringComparison.Ordinal));
    }

    private static bool IsTrace(JsonElement message) => message.TryGetProperty("method", out var method) && method.ValueEquals("$/logTrace");

    private static string Message(JsonElement trace) => trace.GetProperty("params").GetProperty("message").GetString()!;
}
