using System.Text;
using System.Text.Json;
using RigLang.LanguageServer.Tests.Support;

namespace RigLang.LanguageServer.Tests;

public class BadMessageTests
{
    private const string Uri = "file:///w/a.rig";

    [Theory]
    [InlineData("{\"jsonrpc\":\"2.0\",", "null", -32700)]
    [InlineData("", "null", -32700)]
    [InlineData("not json at all", "null", -32700)]
    [InlineData("[]", "null", -32600)]
    [InlineData("[{\"jsonrpc\":\"2.0\",\"id\":7,\"method\":\"shutdown\"}]", "null", -32600)]
    [InlineData("42", "null", -32600)]
    [InlineData("{}", "null", -32600)]
    [InlineData("{\"jsonrpc\":\"2.0\",\"id\":7,\"method\":5}", "7", -32600)]
    [InlineData("{\"jsonrpc\":\"2.0\",\"id\":7,\"method\":\"textDocument/hover\",\"params\":5}", "7", -32600)]
    [InlineData("{\"jsonrpc\":\"2.0\",\"id\":\"x\",\"method\":\"textDocument/hover\",\"params\":\"y\"}", "x", -32600)]
    public async Task A_body_that_is_no_message_is_answered_and_the_next_one_is_read(string body, string id, int code)
    {
        await using var server = await RunningServer.StartAsync();
        var answer = server.Client.Expect(id == "null" ? "" : id);

        await server.Client.SendBodyAsync(body);

        (await answer).GetProperty("error").GetProperty("code").GetInt32().Should().Be(code);
        (await server.Client.ResultAsync("textDocument/foldingRange", new { textDocument = new { uri = Uri } })).GetArrayLength().Should().Be(0);
    }

    [Fact]
    public async Task Nesting_beyond_all_measure_is_answered()
    {
        await using var server = await RunningServer.StartAsync();
        var answer = server.Client.Expect("");

        await server.Client.SendBodyAsync(new string('[', 200_000) + new string(']', 200_000));

        (await answer).GetProperty("error").GetProperty("code").GetInt32().Should().Be(-32700);
    }

    [Fact]
    public async Task A_header_that_makes_no_sense_ends_the_connection_with_1()
    {
        await using var server = await RunningServer.StartAsync();

        await server.Client.SendRawAsync(Encoding.ASCII.GetBytes("Content-Length: many\r\n\r\n{}"));

        (await server.ExitCodeAsync()).Should().Be(1);
    }

    [Fact]
    public async Task Header_fields_it_does_not_need_are_read_over()
    {
        await using var server = await RunningServer.StartAsync();
        var answer = server.Client.Expect("s");
        const string Body = """{"jsonrpc":"2.0","id":"s","method":"shutdown"}""";

        await server.Client.SendRawAsync(Encoding.ASCII.GetBytes($"Content-Type: application/vscode-jsonrpc; charset=utf-8\r\nContent-Length: {Body.Length}\r\n\r\n{Body}"));

        (await answer).GetProperty("result").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"textDocument":{"uri":"file:///w/a.rig"}}""")]
    [InlineData("""{"textDocument":{"uri":null},"position":{"line":0,"character":0}}""")]
    [InlineData("""{"textDocument":{"uri":"file:///w/a.rig"},"position":{"line":-1,"character":0}}""")]
    [InlineData("""{"textDocument":{"uri":"file:///w/a.rig"},"position":{"line":"0","character":0}}""")]
    [InlineData("""{"textDocument":"file:///w/a.rig","position":{"line":0,"character":0}}""")]
    [InlineData("""[]""")]
    [InlineData("""[1,2]""")]
    public async Task Parameters_that_do_not_fit_are_invalid_params(string parameters)
    {
        await using var server = await RunningServer.StartAsync();

        var response = await server.Client.RequestAsync("textDocument/hover", JsonDocument.Parse(parameters).RootElement);

        response.GetProperty("error").GetProperty("code").GetInt32().Should().Be(-32602);
        response.GetRawText().Should().NotContain("   at ").And.NotContain("stack");
    }

    [Fact]
    public async Task An_unknown_request_is_method_not_found_and_an_unknown_notification_is_passed_over()
    {
        await using var server = await RunningServer.StartAsync();

        await server.Client.NotifyAsync("$/setTrace", new { value = "off" });
        await server.Client.NotifyAsync("window/workDoneProgress/cancel", new { token = 1 });
        (await server.Client.ErrorAsync("textDocument/moniker", new { textDocument = new { uri = Uri } })).Should().Be(-32601);

        server.Client.Received.Where(m => m.TryGetProperty("method", out var method) && method.ValueEquals("window/logMessage")).Should().BeEmpty();
    }

    [Fact]
    public async Task A_notification_that_does_not_fit_is_logged_and_not_used()
    {
        await using var server = await RunningServer.StartAsync();

        await server.Client.NotifyAsync("textDocument/didOpen", new { textDocument = new { uri = Uri } });

        var log = await server.Client.NextAsync("window/logMessage");
        log.GetProperty("type").GetInt32().Should().Be(2);
        log.GetProperty("message").GetString().Should().StartWith("textDocument/didOpen: ").And.Contain("version");
        server.Workspace.Log.Should().NotContain(l => l.StartsWith("open"));
    }

    [Fact]
    public async Task A_file_nobody_knows_has_empty_answers()
    {
        await using var server = await RunningServer.StartAsync();
        var textDocument = new { uri = "file:///nowhere/x.rig" };
        var position = new { line = 3, character = 4 };
        var range = new { start = position, end = position };

        (await server.Client.ResultAsync("textDocument/hover", new { textDocument, position })).ValueKind.Should().Be(JsonValueKind.Null);
        (await server.Client.ResultAsync("textDocument/completion", new { textDocument, position })).GetRawText().Should().Be("""{"isIncomplete":false,"items":[]}""");
        (await server.Client.ResultAsync("textDocument/definition", new { textDocument, position })).GetRawText().Should().Be("[]");
        (await server.Client.ResultAsync("textDocument/references", new { textDocument, position, context = new { includeDeclaration = true } })).GetRawText().Should().Be("[]");
        (await server.Client.ResultAsync("textDocument/documentSymbol", new { textDocument })).GetRawText().Should().Be("[]");
        (await server.Client.ResultAsync("textDocument/foldingRange", new { textDocument })).GetRawText().Should().Be("[]");
        (await server.Client.ResultAsync("textDocument/inlayHint", new { textDocument, range })).GetRawText().Should().Be("[]");
        (await server.Client.ResultAsync("textDocument/semanticTokens/full", new { textDocument })).GetRawText().Should().Be("""{"data":[]}""");
        (await server.Client.ResultAsync("textDocument/formatting", new { textDocument, options = new { tabSize = 4, insertSpaces = true } })).GetRawText().Should().Be("[]");
        (await server.Client.ResultAsync("textDocument/codeAction", new { textDocument, range, context = new { diagnostics = Array.Empty<object>() } })).GetRawText().Should().Be("[]");
    }

    [Fact]
    public async Task A_change_of_a_file_that_is_not_open_is_logged_and_not_used()
    {
        await using var server = await RunningServer.StartAsync();

        await server.ReplaceAsync(Uri, "x", 2);

        (await server.Client.NextAsync("window/logMessage")).GetProperty("message").GetString().Should().Contain("a.rig is not open");
        server.Workspace.Log.Should().NotContain(l => l.StartsWith("change"));
    }
}
