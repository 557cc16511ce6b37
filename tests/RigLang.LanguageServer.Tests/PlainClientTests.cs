using RigLang.Editing;
using RigLang.LanguageServer.Tests.Support;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.LanguageServer.Tests;

/// <summary>A client that announces no capability gets the plain form of everything.</summary>
public class PlainClientTests : IAsyncLifetime
{
    private const string A = "file:///w/a.rig";
    private static readonly object Document = new { uri = A };
    private static readonly object Position = new { line = 0, character = 0 };
    private static readonly FileId FileA = RunningServer.File(A);
    private RunningServer _server = null!;

    private FakeAnswers Answers => _server.Workspace.Answers;

    public async Task InitializeAsync()
    {
        _server = await RunningServer.StartAsync(capabilities: new { });
        await _server.OpenAsync(A, "x");
        await _server.NextSetAsync();
    }

    public async Task DisposeAsync() => await _server.DisposeAsync();

    [Fact]
    public async Task Hover_is_plain_text()
    {
        Answers.Hover = (_, _, _) => new HoverCard(FakeAnswers.At(0, 0, 1), "### Wheelbase\n**2.94 m** from [coast.rig](file:///w/coast.rig)\n```rig\nwheelbase `x`\n```\n2 * 3");

        var hover = await _server.Client.ResultAsync("textDocument/hover", new { textDocument = Document, position = Position });

        hover.GetProperty("contents").GetProperty("kind").GetString().Should().Be("plaintext");
        hover.GetProperty("contents").GetProperty("value").GetString().Should().Be("Wheelbase\n2.94 m from coast.rig\nwheelbase x\n2 * 3");
    }

    [Theory]
    [InlineData("axle ${1:front}\n    carries $0", "axle front\n    carries ")]
    [InlineData("drive ${1|front,rear,all|}", "drive front")]
    [InlineData("price \\$5 \\} $1${2}", "price $5 } ")]
    [InlineData("plain", "plain")]
    public async Task A_snippet_comes_without_its_stops(string snippet, string text)
    {
        Answers.Completions = [new CompletionEntry("x", CompletionSort.Fact, "", "", new TextReplacement(FakeAnswers.At(0, 0, 0), snippet), IsSnippet: true, "")];

        var item = (await _server.Client.ResultAsync("textDocument/completion", new { textDocument = Document, position = Position })).GetProperty("items")[0];

        item.GetProperty("insertTextFormat").GetInt32().Should().Be(1);
        item.GetProperty("textEdit").GetProperty("newText").GetString().Should().Be(text);
    }

    [Fact]
    public async Task The_outline_is_flat_and_names_what_holds_each_entry()
    {
        var axle = new OutlineEntry("front", "", OutlineSort.Block, FakeAnswers.At(1, 0, 5), FakeAnswers.At(1, 0, 5), []);
        Answers.Outline = (_, _) => [new OutlineEntry("van", "vehicle", OutlineSort.Vehicle, new LineRange(new LinePosition(0, 0), new LinePosition(2, 0)), FakeAnswers.At(0, 0, 3), [axle])];

        (await _server.Client.ResultAsync("textDocument/documentSymbol", new { textDocument = Document })).GetRawText().Should().Be(
            """[{"name":"van","kind":5,"location":{"uri":"file:///w/a.rig","range":{"start":{"line":0,"character":0},"end":{"line":2,"character":0}}}},"""
            + """{"name":"front","kind":8,"location":{"uri":"file:///w/a.rig","range":{"start":{"line":1,"character":0},"end":{"line":1,"character":5}}},"containerName":"van"}]""");
    }

    [Fact]
    public async Task Related_places_are_in_the_message()
    {
        var related = new RelatedPlace(new FilePlace(FileA, FakeAnswers.At(4, 0, 1)), "given here too");
        var elsewhere = new RelatedPlace(new FilePlace(new FileId("/w/b.rig"), FakeAnswers.At(6, 0, 1)), "and here");
        Answers.Findings = (_, _, _) => [FakeAnswers.Finding(FakeAnswers.At(0, 0, 1), "given twice") with { Related = [related, elsewhere] }];

        await _server.ReplaceAsync(A, "y", 2);

        var diagnostic = (await _server.NextSetAsync()).GetProperty("diagnostics")[0];
        diagnostic.GetProperty("message").GetString().Should().Be("given twice\nline 5: given here too\nb.rig:7: and here");
        diagnostic.EnumerateObject().Select(p => p.Name).Should().Equal("range", "severity", "code", "source", "message");
    }

    [Fact]
    public async Task Edits_of_the_workspace_come_by_uri()
    {
        Answers.Changes = [new OfferedChange("Mend", ChangeSort.Rewrite, new FilePlace(FileA, FakeAnswers.At(0, 0, 1)), "z")];

        (await _server.Client.ResultAsync("textDocument/codeAction", new
        {
            textDocument = Document, range = new { start = Position, end = Position }, context = new { diagnostics = Array.Empty<object>() },
        }))[0].GetProperty("edit").GetRawText().Should().Be(
            """{"changes":{"file:///w/a.rig":[{"range":{"start":{"line":0,"character":0},"end":{"line":0,"character":1}},"newText":"z"}]}}""");
    }

    [Fact]
    public async Task Nothing_is_registered_or_asked()
    {
        await _server.Client.ResultAsync("shutdown");

        _server.Client.Received.Where(m => m.TryGetProperty("method", out _) && m.TryGetProperty("id", out _)).Should().BeEmpty();
    }

    [Theory]
    [InlineData("5")]
    [InlineData("\"all\"")]
    [InlineData("""{"textDocument":[],"workspace":{"configuration":"yes"}}""")]
    [InlineData("""{"textDocument":{"hover":{"contentFormat":"markdown"},"publishDiagnostics":{"tagSupport":true}}}""")]
    public async Task Capabilities_of_a_strange_form_count_as_none(string capabilities)
    {
        await using var server = RunningServer.Silent();

        var result = await server.Client.ResultAsync("initialize", new { processId = (int?)null, rootUri = (string?)null, capabilities = System.Text.Json.JsonDocument.Parse(capabilities).RootElement });

        result.GetProperty("capabilities").TryGetProperty("codeActionProvider", out _).Should().BeFalse();
    }
}
