using System.Text.Json;
using RigLang.LanguageServer.Tests.Support;

namespace RigLang.LanguageServer.Tests;

/// <summary>Findings on request, for clients that ask for them in place of being sent them.</summary>
public class PullTests
{
    private const string A = "file:///w/a.rig";
    private const string B = "file:///w/b.rig";
    private static readonly TimeSpan TooLong = TimeSpan.FromSeconds(20);
    private static readonly object Both = JsonDocument.Parse(
        """{"textDocument":{"diagnostic":{},"publishDiagnostics":{}},"workspace":{"diagnostics":{"refreshSupport":true}}}""").RootElement;

    [Theory]
    [InlineData("""{"textDocument":{"diagnostic":{},"publishDiagnostics":{}}}""", "{}", false)]
    [InlineData("""{"textDocument":{"diagnostic":{},"publishDiagnostics":{}}}""", """{"diagnostics":"pull"}""", true)]
    [InlineData("""{"textDocument":{"diagnostic":{}}}""", "{}", true)]
    [InlineData("""{"textDocument":{"publishDiagnostics":{}}}""", """{"diagnostics":"pull"}""", false)]
    public async Task Findings_are_either_sent_or_fetched(string capabilities, string settings, bool isPulled)
    {
        await using var server = RunningServer.Silent();
        var offer = (await server.Client.ResultAsync("initialize", new
        {
            processId = (int?)null, rootUri = (string?)null, capabilities = JsonDocument.Parse(capabilities).RootElement, initializationOptions = JsonDocument.Parse(settings).RootElement,
        })).GetProperty("capabilities");
        offer.TryGetProperty("diagnosticProvider", out var provider).Should().Be(isPulled);
        if (isPulled)
        {
            provider.GetRawText().Should().Be("""{"identifier":"riglang","interFileDependencies":true,"workspaceDiagnostics":true}""");
        }
    }

    [Fact]
    public async Task A_set_that_is_known_is_not_sent_again()
    {
        await using var server = await StartAsync();
        await server.OpenAsync(A, "good\nbad");
        var first = await AskAsync(server, A, null);
        first.GetProperty("kind").GetString().Should().Be("full");
        first.GetProperty("items").EnumerateArray().Select(item => item.GetProperty("range").GetProperty("start").GetProperty("line").GetInt32()).Should().Equal(1);
        var id = first.GetProperty("resultId").GetString();

        (await AskAsync(server, A, id)).GetRawText().Should().Be($$"""{"kind":"unchanged","resultId":"{{id}}"}""");
        await server.ReplaceAsync(A, "good\ngood", 2);
        var mended = await AskAsync(server, A, id);
        mended.GetProperty("items").GetArrayLength().Should().Be(0);
        mended.GetProperty("resultId").GetString().Should().NotBe(id);
        server.Client.Received.Should().NotContain(m => m.GetRawText().Contains("publishDiagnostics", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_workspace_is_told_whole_then_what_changes_and_not_before()
    {
        await using var server = await StartAsync();
        server.Workspace.Disk[RunningServer.File(B)] = "bad";
        await server.OpenAsync(A, "bad\nbad");
        var first = (await AskWorkspaceAsync(server)).GetProperty("items");
        first.EnumerateArray().Select(item => $"{item.GetProperty("uri")} {item.GetProperty("version")} {item.GetProperty("items").GetArrayLength()}").Should().Equal($"{A} 1 2", $"{B}  1");
        var known = first.EnumerateArray().Select(item => new { uri = item.GetProperty("uri").GetString(), value = item.GetProperty("resultId").GetString() }).ToArray();

        var held = server.Client.RequestAsync("workspace/diagnostic", new { previousResultIds = known });
        await AskAsync(server, A, null);
        held.IsCompleted.Should().BeFalse("nothing has changed");
        await server.ReplaceAsync(A, "bad", 2);
        var changed = (await held.WaitAsync(TooLong)).GetProperty("result").GetProperty("items");

        changed.EnumerateArray().Select(item => $"{item.GetProperty("uri")} {item.GetProperty("version")} {item.GetProperty("kind")} {item.GetProperty("items").GetArrayLength()}").Should().Equal($"{A} 2 full 1");
    }

    [Fact]
    public async Task A_file_that_has_gone_gives_its_findings_back()
    {
        await using var server = await StartAsync();
        server.Workspace.Disk[RunningServer.File(B)] = "bad";
        await server.OpenAsync(A, "good");
        var known = (await AskWorkspaceAsync(server)).GetProperty("items").EnumerateArray().Select(item => new { uri = item.GetProperty("uri").GetString(), value = item.GetProperty("resultId").GetString() }).ToArray();
        known.Should().ContainSingle();

        server.Workspace.Disk.Remove(RunningServer.File(B));
        await server.Client.NotifyAsync("workspace/didChangeWatchedFiles", new { changes = new[] { new { uri = B, type = 3 } } });

        var gone = (await server.Client.ResultAsync("workspace/diagnostic", new { previousResultIds = known })).GetProperty("items")[0];
        gone.GetProperty("uri").GetString().Should().Be(B);
        gone.GetProperty("items").GetArrayLength().Should().Be(0);
    }

    [Fact]
    public async Task What_is_held_is_answered_before_the_end()
    {
        await using var server = await StartAsync();
        await server.OpenAsync(A, "bad");
        var known = (await AskWorkspaceAsync(server)).GetProperty("items").EnumerateArray().Select(item => new { uri = A, value = item.GetProperty("resultId").GetString() }).ToArray();
        var held = server.Client.RequestAsync("workspace/diagnostic", new { previousResultIds = known });
        await AskAsync(server, A, null);

        await server.Client.ResultAsync("shutdown");

        (await held.WaitAsync(TooLong)).GetProperty("result").GetRawText().Should().Be("""{"items":[]}""");
    }

    [Fact]
    public async Task A_request_broken_off_by_an_edit_is_to_be_made_again()
    {
        await using var server = await StartAsync();
        using var begun = new ManualResetEventSlim();
        server.Workspace.Answers.Findings = (_, text, cancel) =>
        {
            if (text == "old")
            {
                begun.Set();
                cancel.WaitHandle.WaitOne(TooLong);
                cancel.ThrowIfCancellationRequested();
            }

            return [];
        };
        await server.OpenAsync(A, "old");
        var asked = server.Client.RequestAsync("textDocument/diagnostic", new { textDocument = new { uri = A } });
        begun.Wait(TooLong).Should().BeTrue();
        await server.ReplaceAsync(A, "new", 2);

        (await asked).GetProperty("error").GetRawText().Should().Be("""{"code":-32802,"message":"the text has changed since","data":{"retriggerRequest":true}}""");
    }

    [Fact]
    public async Task Other_open_files_are_to_be_asked_about_again_when_an_edit_touches_them()
    {
        await using var server = await StartAsync();
        server.Workspace.Dependants[RunningServer.File(A)] = [RunningServer.File(B)];
        await server.OpenAsync(B, "x");
        await server.OpenAsync(A, "x");
        await server.ReplaceAsync(A, "y", 2);
        await server.Client.NextAsync("workspace/diagnostic/refresh");
    }

    private static Task<RunningServer> StartAsync() => RunningServer.StartAsync(Both, settings: new { diagnostics = "pull" });

    private static Task<JsonElement> AskAsync(RunningServer server, string uri, string? previousResultId) =>
        server.Client.ResultAsync("textDocument/diagnostic", new { textDocument = new { uri }, previousResultId });

    private static Task<JsonElement> AskWorkspaceAsync(RunningServer server) => server.Client.ResultAsync("workspace/diagnostic", new { previousResultIds = Array.Empty<object>() });
}
