using System.Text;
using RigLang.Editing;
using RigLang.LanguageServer.Tests.Support;

namespace RigLang.LanguageServer.Tests;

public class QueueTests
{
    private const string Uri = "file:///w/a.rig";
    private static readonly TimeSpan TooLong = TimeSpan.FromSeconds(20);
    private static readonly object Place = new { textDocument = new { uri = Uri }, position = new { line = 0, character = 0 } };

    [Fact]
    public async Task A_read_sees_the_text_as_it_was_at_its_place_in_the_order()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Answers.Hover = (text, _, _) => new HoverCard(FakeAnswers.At(0, 0, 1), text);
        await server.OpenAsync(Uri, "text 0");

        var answers = new List<Task<System.Text.Json.JsonElement>>();
        for (var version = 1; version <= 200; version++)
        {
            await server.ReplaceAsync(Uri, $"text {version}", version);
            answers.Add(server.Client.ResultAsync("textDocument/hover", Place));
        }

        var seen = (await Task.WhenAll(answers)).Select(a => a.GetProperty("contents").GetProperty("value").GetString());
        seen.Should().Equal(Enumerable.Range(1, 200).Select(v => $"text {v}"));
    }

    [Fact]
    public async Task A_read_runs_beside_the_writes_that_follow_it()
    {
        await using var server = await RunningServer.StartAsync();
        using var changed = new ManualResetEventSlim();
        server.Workspace.Answers.Hover = (text, _, _) =>
        {
            changed.Wait(TooLong, CancellationToken.None).Should().BeTrue("the change behind it must not wait for the read");
            return new HoverCard(FakeAnswers.At(0, 0, 1), text);
        };
        server.Workspace.InsideWrite = what =>
        {
            if (what.StartsWith("change", StringComparison.Ordinal))
            {
                changed.Set();
            }
        };
        await server.OpenAsync(Uri, "before");

        var hover = server.Client.ResultAsync("textDocument/hover", Place);
        await server.ReplaceAsync(Uri, "after", 2);

        (await hover).GetProperty("contents").GetProperty("value").GetString().Should().Be("before");
    }

    [Fact]
    public async Task A_read_waits_for_the_writes_before_it()
    {
        await using var server = await RunningServer.StartAsync();
        using var gate = new ManualResetEventSlim();
        server.Workspace.InsideWrite = what => gate.Wait(what.StartsWith("open", StringComparison.Ordinal) ? TooLong : TimeSpan.Zero);
        server.Workspace.Answers.Hover = (text, _, _) => new HoverCard(FakeAnswers.At(0, 0, 1), text);

        await server.OpenAsync(Uri, "opened");
        var hover = server.Client.ResultAsync("textDocument/hover", Place);
        await server.Client.ErrorAsync("no/such"); // answered past the queue
        hover.IsCompleted.Should().BeFalse();
        gate.Set();

        (await hover).GetProperty("contents").GetProperty("value").GetString().Should().Be("opened");
    }

    [Fact]
    public async Task A_request_the_client_cancels_is_answered_request_cancelled()
    {
        await using var server = await RunningServer.StartAsync();
        using var begun = new ManualResetEventSlim();
        server.Workspace.Answers.Hover = (_, _, cancel) =>
        {
            begun.Set();
            cancel.WaitHandle.WaitOne(TooLong);
            cancel.ThrowIfCancellationRequested();
            return null;
        };
        await server.OpenAsync(Uri, "x");

        var (id, response) = server.Client.Request("textDocument/hover", Place);
        begun.Wait(TooLong).Should().BeTrue();
        await server.Client.NotifyAsync("$/cancelRequest", new { id });

        (await response).GetProperty("error").GetProperty("code").GetInt32().Should().Be(-32800);
    }

    [Fact]
    public async Task A_request_cancelled_before_its_turn_never_runs()
    {
        await using var server = await RunningServer.StartAsync();
        using var gate = new ManualResetEventSlim();
        var ran = false;
        server.Workspace.InsideWrite = what => gate.Wait(what.StartsWith("open", StringComparison.Ordinal) ? TooLong : TimeSpan.Zero);
        server.Workspace.Answers.Hover = (_, _, _) =>
        {
            ran = true;
            return null;
        };
        await server.OpenAsync(Uri, "x");

        var (id, response) = server.Client.Request("textDocument/hover", Place);
        await server.Client.NotifyAsync("$/cancelRequest", new { id });
        (await response).GetProperty("error").GetProperty("code").GetInt32().Should().Be(-32800); // at once, while the queue still waits at the gate
        gate.Set();
        await server.Client.ResultAsync("textDocument/foldingRange", new { textDocument = new { uri = Uri } }); // its turn is behind the hover's

        ran.Should().BeFalse();
    }

    [Fact]
    public async Task A_read_of_the_whole_text_is_content_modified_when_the_text_is_edited_under_it()
    {
        await using var server = await RunningServer.StartAsync();
        using var begun = new ManualResetEventSlim();
        server.Workspace.Answers.Outline = (_, cancel) =>
        {
            begun.Set();
            cancel.WaitHandle.WaitOne(TooLong);
            cancel.ThrowIfCancellationRequested();
            return [];
        };
        await server.OpenAsync(Uri, "x");

        var outline = server.Client.RequestAsync("textDocument/documentSymbol", new { textDocument = new { uri = Uri } });
        begun.Wait(TooLong).Should().BeTrue();
        await server.ReplaceAsync(Uri, "y", 2);

        (await outline).GetProperty("error").GetProperty("code").GetInt32().Should().Be(-32801);
    }

    [Fact]
    public async Task An_edit_of_another_file_does_not_break_a_read_off()
    {
        await using var server = await RunningServer.StartAsync();
        using var begun = new ManualResetEventSlim();
        using var gate = new ManualResetEventSlim();
        server.Workspace.Answers.Outline = (text, cancel) =>
        {
            begun.Set();
            gate.Wait(TooLong, CancellationToken.None);
            cancel.ThrowIfCancellationRequested();
            return [];
        };
        await server.OpenAsync(Uri, "x");
        var outline = server.Client.ResultAsync("textDocument/documentSymbol", new { textDocument = new { uri = Uri } });
        begun.Wait(TooLong).Should().BeTrue();

        await server.OpenAsync("file:///w/b.rig", "bad");
        while ((await server.NextSetAsync()).GetProperty("uri").GetString() != "file:///w/b.rig")
        {
        }

        gate.Set();
        (await outline).GetArrayLength().Should().Be(0);
    }

    [Fact]
    public async Task A_request_that_fails_fails_alone_and_the_log_says_why()
    {
        var failures = new List<Exception>();
        await using var server = await RunningServer.StartAsync(options: RunningServer.Options with { OnFailure = failures.Add });
        server.Workspace.Answers.Hover = (_, _, _) => throw new InvalidOperationException("the axle fell off");
        await server.OpenAsync(Uri, "bad");

        var response = await server.Client.RequestAsync("textDocument/hover", Place);

        response.GetProperty("error").GetProperty("code").GetInt32().Should().Be(-32603);
        response.GetRawText().Should().NotContain("the axle fell off").And.NotContain("   at ").And.NotContain("data");
        var log = await server.Client.NextAsync("window/logMessage");
        log.GetRawText().Should().Be("""{"type":1,"message":"textDocument/hover failed: InvalidOperationException: the axle fell off"}""");
        failures.Should().ContainSingle().Which.StackTrace.Should().NotBeNull();
        (await server.Client.ResultAsync("textDocument/foldingRange", new { textDocument = new { uri = Uri } })).GetArrayLength().Should().Be(0);
    }

    [Fact]
    public async Task A_write_that_fails_does_not_stop_those_behind_it()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.InsideWrite = what => _ = what.Contains("b.rig", StringComparison.Ordinal) ? throw new InvalidOperationException("no room") : 0;

        await server.OpenAsync("file:///w/b.rig", "x");
        (await server.Client.NextAsync("window/logMessage")).GetProperty("message").GetString().Should().Contain("textDocument/didOpen failed").And.Contain("no room");
    }

    [Fact]
    public async Task A_workspace_that_cannot_be_made_fails_requests_instead_of_leaving_them_open()
    {
        await using var server = RunningServer.Silent(factory: () => throw new InvalidOperationException("no workspace"));
        await server.Client.ResultAsync("initialize", new { processId = (int?)null, rootUri = (string?)null, capabilities = new { } });

        (await server.Client.ErrorAsync("textDocument/hover", Place)).Should().Be(-32603);
    }

    [Fact]
    public async Task Edits_in_one_change_are_each_in_terms_of_the_text_before_it()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Answers.Hover = (text, _, _) => new HoverCard(FakeAnswers.At(0, 0, 1), text);
        await server.OpenAsync(Uri, "drag-area 0.92 m² ± 8 % 🚙\nend");

        await server.Client.NotifyAsync("textDocument/didChange", new
        {
            textDocument = new { uri = Uri, version = 2 },
            contentChanges = new object[]
            {
                new { range = Range(0, 24, 0, 26), rangeLength = 2, text = "🚐°" }, // the emoji is two UTF-16 units
                new { range = Range(0, 26, 0, 27), text = "µ" },
                new { range = Range(1, 0, 1, 3), text = "finis" },
            },
        });

        (await server.Client.ResultAsync("textDocument/hover", Place)).GetProperty("contents").GetProperty("value").GetString()
            .Should().Be("drag-area 0.92 m² ± 8 % 🚐µ\nfinis");
    }

    [Fact]
    public async Task A_body_of_ten_megabytes_with_characters_of_many_bytes_arrives_whole()
    {
        await using var server = await RunningServer.StartAsync();
        var text = string.Concat(Enumerable.Repeat("axle °²µ· 🚙 e\u0301\n", 500_000));
        Encoding.UTF8.GetByteCount(text).Should().BeGreaterThan(10_000_000);
        server.Workspace.Answers.Hover = (held, _, _) => new HoverCard(FakeAnswers.At(0, 0, 1), held == text ? "whole" : "damaged");

        await server.OpenAsync(Uri, text);

        (await server.Client.ResultAsync("textDocument/hover", Place)).GetProperty("contents").GetProperty("value").GetString().Should().Be("whole");
    }

    private static object Range(int line, int from, int endLine, int to) =>
        new { start = new { line, character = from }, end = new { line = endLine, character = to } };
}
