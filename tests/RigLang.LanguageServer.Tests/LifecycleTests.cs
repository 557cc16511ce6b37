using System.Text.Json;
using RigLang.LanguageServer.Tests.Support;

namespace RigLang.LanguageServer.Tests;

public class LifecycleTests
{
    private const string Uri = "file:///w/a.rig";

    [Fact]
    public async Task Initialize_names_the_server_and_what_it_does()
    {
        await using var server = RunningServer.Silent();

        var result = await server.Client.ResultAsync("initialize", new { processId = 1, rootUri = "file:///w", capabilities = RunningServer.FullCapabilities });

        result.GetProperty("serverInfo").GetRawText().Should().Be("""{"name":"riglang","version":"1.2.3"}""");
        var offer = result.GetProperty("capabilities");
        offer.GetProperty("positionEncoding").GetString().Should().Be("utf-16");
        offer.GetProperty("textDocumentSync").GetRawText().Should().Be("""{"openClose":true,"change":2}""");
        offer.GetProperty("codeActionProvider").GetProperty("codeActionKinds").GetRawText().Should().Be("""["quickfix","refactor.rewrite","refactor.extract","source.fixAll.riglang"]""");
        offer.EnumerateObject().Select(p => p.Name).Should().BeEquivalentTo(
            "positionEncoding", "textDocumentSync", "hoverProvider", "completionProvider", "definitionProvider", "referencesProvider", "documentSymbolProvider",
            "foldingRangeProvider", "inlayHintProvider", "documentFormattingProvider", "documentRangeFormattingProvider", "semanticTokensProvider", "workspace",
            "codeActionProvider", "typeDefinitionProvider", "documentHighlightProvider", "renameProvider", "linkedEditingRangeProvider", "selectionRangeProvider",
            "documentLinkProvider", "workspaceSymbolProvider", "documentOnTypeFormattingProvider", "signatureHelpProvider",
            "codeLensProvider", "executeCommandProvider");
    }

    [Fact]
    public async Task Code_actions_are_not_offered_to_a_client_that_takes_commands_alone()
    {
        await using var server = RunningServer.Silent();

        var result = await server.Client.ResultAsync("initialize", new { processId = (int?)null, rootUri = (string?)null, capabilities = new { } });

        result.GetProperty("capabilities").TryGetProperty("codeActionProvider", out _).Should().BeFalse();
    }

    [Fact]
    public async Task Initialize_is_answered_before_the_workspace_is_made()
    {
        var made = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        var workspace = new FakeWorkspace();
        await using var server = RunningServer.Silent(workspace, factory: () =>
        {
            made.SetResult();
            return workspace;
        });

        await server.Client.ResultAsync("initialize", new { processId = (int?)null, rootUri = "file:///w", capabilities = new { } });

        made.Task.IsCompleted.Should().BeFalse();
        await server.Client.NotifyAsync("initialized");
        await made.Task.WaitAsync(TimeSpan.FromSeconds(20));
    }

    [Fact]
    public async Task Before_initialize_a_request_is_refused_and_a_notification_dropped()
    {
        await using var server = RunningServer.Silent();

        await server.OpenAsync(Uri, "bad");
        (await server.Client.ErrorAsync("textDocument/hover", new { textDocument = new { uri = Uri }, position = new { line = 0, character = 0 } })).Should().Be(-32002);

        await server.Client.ResultAsync("initialize", new { processId = (int?)null, rootUri = (string?)null, capabilities = new { } });
        await server.OpenAsync("file:///w/b.rig", "good");
        (await server.NextSetAsync()).GetProperty("uri").GetString().Should().Be("file:///w/b.rig");
        server.Workspace.Log.Should().NotContain(l => l.Contains("a.rig"));
    }

    [Fact]
    public async Task A_second_initialize_is_an_invalid_request()
    {
        await using var server = await RunningServer.StartAsync();

        (await server.Client.ErrorAsync("initialize", new { processId = (int?)null, rootUri = (string?)null, capabilities = new { } })).Should().Be(-32600);
    }

    [Fact]
    public async Task After_shutdown_requests_are_invalid_and_exit_ends_with_0()
    {
        await using var server = await RunningServer.StartAsync();

        (await server.Client.ResultAsync("shutdown")).ValueKind.Should().Be(JsonValueKind.Null);
        (await server.Client.ErrorAsync("textDocument/foldingRange", new { textDocument = new { uri = Uri } })).Should().Be(-32600);
        await server.Client.NotifyAsync("exit");

        (await server.ExitCodeAsync()).Should().Be(0);
    }

    [Theory]
    [InlineData("""{"jsonrpc":"2.0","id":"s","method":"shutdown"}""")]
    [InlineData("""{"jsonrpc":"2.0","id":"s","method":"shutdown","params":null}""")]
    [InlineData("""{"jsonrpc":"2.0","id":"s","method":"shutdown","params":{}}""")]
    [InlineData("""{"jsonrpc":"2.0","id":"s","method":"shutdown","params":[]}""")]
    public async Task Shutdown_is_taken_however_its_missing_parameters_are_written(string body)
    {
        await using var server = await RunningServer.StartAsync();

        var answer = server.Client.Expect("s");
        await server.Client.SendBodyAsync(body);

        (await answer).GetProperty("result").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public async Task Shutdown_and_exit_in_one_breath_still_get_the_answer_out()
    {
        await using var server = await RunningServer.StartAsync();

        var answer = server.Client.RequestAsync("shutdown");
        await server.Client.NotifyAsync("exit");

        (await answer).GetProperty("result").ValueKind.Should().Be(JsonValueKind.Null);
        (await server.ExitCodeAsync()).Should().Be(0);
    }

    [Fact]
    public async Task Exit_without_shutdown_ends_with_1()
    {
        await using var server = await RunningServer.StartAsync();

        await server.Client.NotifyAsync("exit");

        (await server.ExitCodeAsync()).Should().Be(1);
    }

    [Fact]
    public async Task The_end_of_the_input_ends_the_server_with_1_after_what_was_asked_is_answered()
    {
        await using var server = await RunningServer.StartAsync();
        var gate = new ManualResetEventSlim();
        server.Workspace.Answers.Hover = (_, _, _) =>
        {
            gate.Wait(TimeSpan.FromSeconds(20), CancellationToken.None);
            return null;
        };
        await server.OpenAsync(Uri, "x");
        var hover = server.Client.RequestAsync("textDocument/hover", new { textDocument = new { uri = Uri }, position = new { line = 0, character = 0 } });

        await server.Client.EndInputAsync();
        gate.Set();

        (await hover).GetProperty("result").ValueKind.Should().Be(JsonValueKind.Null);
        (await server.ExitCodeAsync()).Should().Be(1);
    }

    [Fact]
    public async Task The_end_of_the_editors_process_ends_the_server()
    {
        var ended = new TaskCompletionSource();
        var watched = new TaskCompletionSource<int>(TaskCreationOptions.RunContinuationsAsynchronously);
        await using var server = RunningServer.Silent(options: RunningServer.Options with
        {
            ProcessEnd = (id, _) =>
            {
                watched.SetResult(id);
                return ended.Task;
            },
        });
        await server.Client.ResultAsync("initialize", new { processId = 4711, rootUri = (string?)null, capabilities = new { } });

        (await watched.Task).Should().Be(4711);
        ended.SetResult();

        (await server.ExitCodeAsync()).Should().Be(1);
    }

    [Fact]
    public async Task A_process_that_does_not_exist_has_ended()
    {
        var watch = ParentProcess.EndAsync(int.MaxValue, CancellationToken.None);

        await watch.WaitAsync(TimeSpan.FromSeconds(20));
        watch.IsCompletedSuccessfully.Should().BeTrue();
    }

    [Fact]
    public async Task A_canceled_token_ends_the_server()
    {
        using var cancel = new CancellationTokenSource();
        await using var server = RunningServer.Silent(cancel: cancel.Token);

        await cancel.CancelAsync();

        (await server.ExitCodeAsync()).Should().Be(1);
    }
}
