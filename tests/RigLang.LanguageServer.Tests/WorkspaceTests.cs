using System.Text.Json.Nodes;
using RigLang.Editing;
using RigLang.LanguageServer.Tests.Support;
using RigLang.Syntax;

namespace RigLang.LanguageServer.Tests;

/// <summary>Folders, files on the disk, registrations and settings.</summary>
public class WorkspaceTests
{
    private const string A = "file:///w/a.rig";

    [Fact]
    public async Task Folders_come_from_the_list_of_folders_first()
    {
        (await FoldersAsync(new { capabilities = new { }, processId = (int?)null, rootUri = "file:///old", workspaceFolders = new[] { Folder("file:///w%20x/"), Folder("untitled:nowhere") } }))
            .Should().Be("folders /w x");
    }

    [Fact]
    public async Task Folders_come_from_the_root_of_older_clients()
    {
        (await FoldersAsync(new { capabilities = new { }, processId = (int?)null, rootUri = "file:///old/", workspaceFolders = (object?)null })).Should().Be("folders /old");
        (await FoldersAsync(new { capabilities = new { }, processId = (int?)null, rootUri = (string?)null, rootPath = "C:\\older" })).Should().Be("folders C:/older");
        (await FoldersAsync(new { capabilities = new { }, processId = (int?)null, rootUri = (string?)null })).Should().Be("folders ");
    }

    [Fact]
    public async Task Folders_come_and_go()
    {
        await using var server = await RunningServer.StartAsync();

        await server.Client.NotifyAsync("workspace/didChangeWorkspaceFolders", new { @event = new { added = new[] { Folder("file:///x"), Folder("file:///y") }, removed = Array.Empty<object>() } });
        await server.Client.NotifyAsync("workspace/didChangeWorkspaceFolders", new { @event = new { added = new[] { Folder("file:///z") }, removed = new[] { Folder("file:///x/") } } });
        await SettledAsync(server);

        server.Workspace.Log.Should().ContainInOrder("folders ", "folders /x /y", "folders /y /z");
    }

    [Fact]
    public async Task A_client_that_forgets_initialized_still_has_its_folders()
    {
        await using var server = RunningServer.Silent();
        await server.Client.ResultAsync("initialize", new { capabilities = new { }, processId = (int?)null, rootUri = "file:///w" });

        await server.OpenAsync(A, "x");
        await server.NextSetAsync();

        server.Workspace.Log.Should().Equal("folders /w", "open /w/a.rig");
    }

    [Fact]
    public async Task Watched_files_are_registered_and_their_changes_passed_on_once_each()
    {
        await using var server = await RunningServer.StartAsync();

        (await server.Client.NextAsync("client/registerCapability")).GetRawText().Should().Be(
            """{"registrations":[{"id":"watched-files","method":"workspace/didChangeWatchedFiles","registerOptions":{"watchers":[{"globPattern":"**/*.rig"},{"globPattern":"**/*.gpx"}]}}]}""");
        await server.Client.NotifyAsync("workspace/didChangeWatchedFiles", new { changes = new[] { Changed(A, 2), Changed("file:///w/t.gpx", 1), Changed(A, 3) } });
        await SettledAsync(server);

        server.Workspace.Log.Should().Contain("disk /w/a.rig /w/t.gpx");
    }

    [Fact]
    public async Task Settings_are_pulled_at_the_start_and_when_they_change()
    {
        var applied = new List<ServerSettings>();
        await using var server = RunningServer.Silent(options: RunningServer.Options with { OnSettings = (_, settings) => applied.Add(settings) });
        var inEditor = """{"unitSystem":"us","hints":true}""";
        server.Client.Answer = (method, _) => method == "workspace/configuration" ? new JsonArray(JsonNode.Parse(inEditor)) : null;
        await server.Client.ResultAsync("initialize", new
        {
            processId = (int?)null, rootUri = (string?)null,
            capabilities = new { workspace = new { configuration = true, didChangeConfiguration = new { dynamicRegistration = true } } },
            initializationOptions = new { unitSystem = "metric" },
        });

        await server.Client.NotifyAsync("initialized");
        (await server.Client.NextAsync("client/registerCapability")).GetRawText().Should().Be(
            """{"registrations":[{"id":"settings","method":"workspace/didChangeConfiguration","registerOptions":{"section":"riglang"}}]}""");
        (await server.Client.NextAsync("workspace/configuration")).GetRawText().Should().Be("""{"items":[{"section":"riglang"}]}""");
        await UntilAsync(server, () => applied.Count == 2);

        inEditor = """{"unitSystem":"asWritten","hints":false}""";
        await server.Client.NotifyAsync("workspace/didChangeConfiguration", new { settings = (object?)null });
        await UntilAsync(server, () => applied.Count == 3);

        applied.Should().Equal(new ServerSettings(UnitSystem.Metric, true), new ServerSettings(UnitSystem.Us, true), new ServerSettings(UnitSystem.AsWritten, false));
    }

    [Fact]
    public async Task Pushed_settings_turn_hints_off_and_ask_for_them_again()
    {
        await using var server = await RunningServer.StartAsync(settings: new { riglang = new { hints = true } });
        server.Workspace.Answers.Notes = [new InlayNote(new LinePosition(0, 0), "9 %", () => "")];
        await server.OpenAsync(A, "x");
        (await HintsAsync(server)).Should().Be(1);

        await server.Client.NotifyAsync("workspace/didChangeConfiguration", new { settings = new { riglang = new { hints = false } } });

        (await HintsAsync(server)).Should().Be(0);
        await server.Client.NextAsync("workspace/inlayHint/refresh");
        server.Client.Received.Single(m => m.TryGetProperty("method", out var name) && name.ValueEquals("workspace/inlayHint/refresh"))
            .TryGetProperty("params", out _).Should().BeFalse("the request has no parameters");
    }

    [Theory]
    [InlineData("""{"unitSystem":"metric"}""", UnitSystem.Metric, true)]
    [InlineData("""{"unitSystem":"furlongs","hints":"no"}""", UnitSystem.AsWritten, true)]
    [InlineData("""{"riglang":{"unitSystem":"us","hints":false},"unitSystem":"metric"}""", UnitSystem.Us, false)]
    [InlineData("""{"riglang":5,"hints":false}""", UnitSystem.AsWritten, false)]
    [InlineData("""[1]""", UnitSystem.AsWritten, true)]
    [InlineData("""null""", UnitSystem.AsWritten, true)]
    public async Task Settings_that_are_not_understood_stay_as_they_were(string json, UnitSystem unitSystem, bool hints)
    {
        ServerSettings? applied = null;
        await using var server = await RunningServer.StartAsync(
            options: RunningServer.Options with { OnSettings = (_, settings) => applied = settings }, settings: System.Text.Json.JsonDocument.Parse(json).RootElement);
        await SettledAsync(server);

        applied.Should().Be(new ServerSettings(unitSystem, hints));
    }

    [Fact]
    public async Task A_practice_and_severities_are_taken_live()
    {
        var applied = new List<ServerSettings>();
        await using var server = await RunningServer.StartAsync(options: RunningServer.Options with { OnSettings = (_, settings) => applied.Add(settings) });
        const string Wished = """{"riglang":{"practice":"common-eu","severity":{"tongue-below-usual":"error","RL118":"off","unused-load":"loud","axle-over-rating":7}}}""";

        await server.Client.NotifyAsync("workspace/didChangeConfiguration", new { settings = System.Text.Json.JsonDocument.Parse(Wished).RootElement });
        await server.Client.NotifyAsync("workspace/didChangeConfiguration", new { settings = System.Text.Json.JsonDocument.Parse(Wished).RootElement });
        await server.Client.NotifyAsync("workspace/didChangeConfiguration", new { settings = new { riglang = new { practice = "" } } });
        await SettledAsync(server);

        applied.Select(settings => settings.Practice).Should().Equal(null, "common-eu", null);
        applied[1].Severities.ByCheck.Should().BeEquivalentTo(new Dictionary<string, Syntax.Checks.Severity?> { ["tongue-below-usual"] = Syntax.Checks.Severity.Error, ["RL118"] = null });
        applied[2].Severities.Should().Be(applied[1].Severities, "what isn't said stays");
    }

    private static object Folder(string uri) => new { uri, name = "a folder" };

    private static object Changed(string uri, int type) => new { uri, type };

    private static async Task<string> FoldersAsync(object initialize)
    {
        await using var server = RunningServer.Silent();
        await server.Client.ResultAsync("initialize", initialize);
        await server.Client.NotifyAsync("initialized");
        await SettledAsync(server);
        return server.Workspace.Log.Single();
    }

    /// <summary>A read comes after every write before it.</summary>
    private static Task<System.Text.Json.JsonElement> SettledAsync(RunningServer server) =>
        server.Client.ResultAsync("textDocument/foldingRange", new { textDocument = new { uri = A } });

    /// <summary>Answers of the client take their own way, so the condition may hold only after some more rounds.</summary>
    private static async Task UntilAsync(RunningServer server, Func<bool> holds)
    {
        for (var round = 0; round < 10_000 && !holds(); round++)
        {
            await SettledAsync(server);
        }

        holds().Should().BeTrue();
    }

    private static async Task<int> HintsAsync(RunningServer server) => (await server.Client.ResultAsync("textDocument/inlayHint", new
    {
        textDocument = new { uri = A }, range = new { start = new { line = 0, character = 0 }, end = new { line = 1, character = 0 } },
    })).GetArrayLength();
}
