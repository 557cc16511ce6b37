using System.Text.Json;
using RigLang.LanguageServer.Tests.Support;

namespace RigLang.LanguageServer.Tests;

public class PublisherTests
{
    private const string A = "file:///w/a.rig";
    private const string B = "file:///w/b.rig";
    private const string C = "file:///w/c.rig";
    private static readonly TimeSpan TooLong = TimeSpan.FromSeconds(20);

    [Fact]
    public async Task A_set_carries_the_version_of_its_text()
    {
        await using var server = await RunningServer.StartAsync();

        await server.OpenAsync(A, "good\nbad", version: 7);
        Said(await server.NextSetAsync()).Should().Be("a.rig v7: 1");
        await server.ReplaceAsync(A, "bad\nbad", version: 9);
        Said(await server.NextSetAsync()).Should().Be("a.rig v9: 2");
    }

    [Fact]
    public async Task Findings_come_first_and_again_once_questions_are_answered()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Answers.AtOnce = _ => [];

        await server.OpenAsync(A, "bad ?", version: 3);

        Said(await server.NextSetAsync()).Should().Be("a.rig v3: 0");
        Said(await server.NextSetAsync()).Should().Be("a.rig v3: 1");
    }

    [Fact]
    public async Task Answering_is_dropped_when_the_text_changes()
    {
        await using var server = await RunningServer.StartAsync();
        var find = server.Workspace.Answers.Findings;
        var begun = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        var dropped = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        server.Workspace.Answers.AtOnce = _ => [];
        server.Workspace.Answers.Findings = (file, text, cancel) =>
        {
            if (text.Contains('?', StringComparison.Ordinal))
            {
                begun.TrySetResult();
                cancel.WaitHandle.WaitOne(TooLong);
                dropped.TrySetResult();
                cancel.ThrowIfCancellationRequested();
            }

            return find(file, text, cancel);
        };

        await server.OpenAsync(A, "bad ?", version: 1);
        Said(await server.NextSetAsync()).Should().Be("a.rig v1: 0");
        await begun.Task.WaitAsync(TooLong);
        await server.ReplaceAsync(A, "bad", version: 2);

        await dropped.Task.WaitAsync(TooLong);
        Said(await server.NextSetAsync()).Should().Be("a.rig v2: 1");
    }

    [Fact]
    public async Task The_file_just_edited_gets_its_set_even_when_nothing_changed()
    {
        await using var server = await RunningServer.StartAsync();

        await server.OpenAsync(A, "good");
        Said(await server.NextSetAsync()).Should().Be("a.rig v1: 0");
        await server.ReplaceAsync(A, "better", version: 2);
        Said(await server.NextSetAsync()).Should().Be("a.rig v2: 0");
    }

    [Fact]
    public async Task Another_file_gets_a_set_only_when_it_differs()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Disk[RunningServer.File(B)] = "bad";
        server.Workspace.Disk[RunningServer.File(C)] = "good";
        server.Workspace.Dependants[RunningServer.File(A)] = [RunningServer.File(B), RunningServer.File(C)];

        await server.OpenAsync(A, "x");
        Said(await server.NextSetAsync()).Should().Be("a.rig v1: 0");
        Said(await server.NextSetAsync()).Should().Be("b.rig: 1");

        await server.ReplaceAsync(A, "y", 2); // B and C are looked at again and say the same
        Said(await server.NextSetAsync()).Should().Be("a.rig v2: 0");
        await server.OpenAsync(C, "bad", 5);
        Said(await server.NextSetAsync()).Should().Be("c.rig v5: 1");
    }

    [Fact]
    public async Task A_file_that_had_findings_and_has_none_gets_an_empty_set_once()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Disk[RunningServer.File(B)] = "bad";
        await server.Client.NotifyAsync("workspace/didChangeWatchedFiles", new { changes = new[] { new { uri = B, type = 1 } } });
        Said(await server.NextSetAsync()).Should().Be("b.rig: 1");

        server.Workspace.Disk.Remove(RunningServer.File(B));
        await server.Client.NotifyAsync("workspace/didChangeWatchedFiles", new { changes = new[] { new { uri = B, type = 3 } } });
        Said(await server.NextSetAsync()).Should().Be("b.rig: 0");

        await server.Client.NotifyAsync("workspace/didChangeWatchedFiles", new { changes = new[] { new { uri = B, type = 3 } } });
        await server.OpenAsync(A, "x");
        Said(await server.NextSetAsync()).Should().Be("a.rig v1: 0");
    }

    [Fact]
    public async Task Closing_a_file_that_only_the_editor_knew_clears_it()
    {
        await using var server = await RunningServer.StartAsync();
        await server.OpenAsync("untitled:Untitled-1", "bad");
        Said(await server.NextSetAsync()).Should().Be("untitled:Untitled-1 v1: 1");

        await server.CloseAsync("untitled:Untitled-1");

        Said(await server.NextSetAsync()).Should().Be("untitled:Untitled-1: 0");
    }

    [Fact]
    public async Task A_file_is_called_by_the_uri_the_client_gave_it()
    {
        await using var server = await RunningServer.StartAsync();

        await server.OpenAsync("file:///c%3A/Rigs/a%2Brig.rig", "bad");

        (await server.NextSetAsync()).GetProperty("uri").GetString().Should().Be("file:///c%3A/Rigs/a%2Brig.rig");
    }

    [Fact]
    public async Task A_file_that_changes_its_spelling_is_cleared_under_the_old_one()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Disk[RunningServer.File("file:///C:/a.rig")] = "bad";
        await server.Client.NotifyAsync("workspace/didChangeWatchedFiles", new { changes = new[] { new { uri = "file:///c%3A/a.rig", type = 1 } } });
        (await server.NextSetAsync()).GetProperty("uri").GetString().Should().Be("file:///C:/a.rig");

        await server.OpenAsync("file:///c%3A/a.rig", "bad");

        (await server.NextSetAsync()).GetRawText().Should().Be("""{"uri":"file:///C:/a.rig","diagnostics":[]}""");
        (await server.NextSetAsync()).GetProperty("uri").GetString().Should().Be("file:///c%3A/a.rig");
    }

    [Fact]
    public async Task The_file_being_typed_in_comes_first_and_the_rest_is_made_up_for_after()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Disk[RunningServer.File(B)] = "bad";
        server.Workspace.Disk[RunningServer.File(C)] = "bad";
        server.Workspace.Dependants[RunningServer.File(A)] = [RunningServer.File(B), RunningServer.File(C)];
        using var reachedB = new ManualResetEventSlim();
        var first = true;
        server.Workspace.Answers.Findings = (file, text, cancel) =>
        {
            if (file == RunningServer.File(B) && first)
            {
                first = false;
                reachedB.Set();
                cancel.WaitHandle.WaitOne(TooLong).Should().BeTrue("the next keystroke calls this pass off");
                cancel.ThrowIfCancellationRequested();
            }

            return FakeAnswers.BadLines(file, text, cancel);
        };

        await server.OpenAsync(A, "x");
        reachedB.Wait(TooLong).Should().BeTrue();
        server.Workspace.Dependants.Clear(); // the next edit touches A alone; what the first one touched is still owed
        await server.ReplaceAsync(A, "bad", 2);

        var said = new List<string>();
        for (var i = 0; i < 4; i++)
        {
            said.Add(Said(await server.NextSetAsync()));
        }

        said.Should().Equal("a.rig v1: 0", "a.rig v2: 1", "b.rig: 1", "c.rig: 1");
    }

    [Fact]
    public async Task Nothing_is_sent_for_a_pass_that_was_called_off_even_if_its_check_did_not_notice()
    {
        await using var server = await RunningServer.StartAsync();
        using var checking = new ManualResetEventSlim();
        using var changed = new ManualResetEventSlim();
        server.Workspace.Answers.Findings = (file, text, cancel) =>
        {
            if (text == "old bad")
            {
                checking.Set();
                cancel.WaitHandle.WaitOne(TooLong); // called off, and answers all the same
            }

            return FakeAnswers.BadLines(file, text, cancel);
        };

        await server.OpenAsync(A, "old bad", 1);
        checking.Wait(TooLong).Should().BeTrue();
        await server.ReplaceAsync(A, "new", 2);

        Said(await server.NextSetAsync()).Should().Be("a.rig v2: 0");
    }

    [Fact]
    public async Task Versions_never_go_back_however_fast_one_types()
    {
        await using var server = await RunningServer.StartAsync();
        await server.OpenAsync(A, "x", 0);
        for (var version = 1; version <= 300; version++)
        {
            await server.ReplaceAsync(A, version == 300 ? "bad bad" : "x", version);
        }

        var versions = new List<int>();
        while (versions.LastOrDefault() != 300)
        {
            versions.Add((await server.NextSetAsync()).GetProperty("version").GetInt32());
        }

        versions.Should().BeInAscendingOrder().And.OnlyHaveUniqueItems();
    }

    [Fact]
    public async Task A_check_that_fails_leaves_the_other_files_alone()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Disk[RunningServer.File(B)] = "bad";
        server.Workspace.Dependants[RunningServer.File(A)] = [RunningServer.File(B)];
        server.Workspace.Answers.Findings = (file, text, cancel) =>
            file == RunningServer.File(A) ? throw new DivideByZeroException("no wheelbase") : FakeAnswers.BadLines(file, text, cancel);

        await server.OpenAsync(A, "x");

        Said(await server.NextSetAsync()).Should().Be("b.rig: 1");
        (await server.Client.NextAsync("window/logMessage")).GetProperty("message").GetString().Should().Be("checking a.rig failed: DivideByZeroException: no wheelbase");
    }

    [Fact]
    public async Task Hints_and_colours_are_asked_for_again_when_another_open_file_was_touched()
    {
        await using var server = await RunningServer.StartAsync();
        server.Workspace.Dependants[RunningServer.File(A)] = [RunningServer.File(B)];
        await server.OpenAsync(B, "x");
        await server.NextSetAsync();

        await server.OpenAsync(A, "x");

        await server.Client.NextAsync("workspace/inlayHint/refresh");
        await server.Client.NextAsync("workspace/semanticTokens/refresh");
    }

    [Fact]
    public async Task Typing_in_one_file_alone_asks_for_nothing_again()
    {
        await using var server = await RunningServer.StartAsync();
        await server.OpenAsync(A, "x");
        await server.NextSetAsync();
        await server.ReplaceAsync(A, "y", 2);
        await server.NextSetAsync();

        await server.Client.ResultAsync("shutdown"); // nothing is sent after this

        server.Client.Received.Should().NotContain(m => m.GetRawText().Contains("/refresh"));
    }

    [Fact]
    public async Task A_client_that_does_not_do_versions_gets_none()
    {
        await using var server = await RunningServer.StartAsync(capabilities: new { });

        await server.OpenAsync(A, "bad");

        (await server.NextSetAsync()).GetRawText().Should().Be(
            """{"uri":"file:///w/a.rig","diagnostics":[{"range":{"start":{"line":0,"character":0},"end":{"line":0,"character":3}},"severity":2,"code":"RL301","source":"riglang","message":"this is bad"}]}""");
    }

    private static string Said(JsonElement set) =>
        $"{set.GetProperty("uri").GetString()!.Replace("file:///w/", "")}{(set.TryGetProperty("version", out var version) ? $" v{version}" : "")}: {set.GetProperty("diagnostics").GetArrayLength()}";
}
