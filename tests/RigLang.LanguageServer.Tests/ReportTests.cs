using System.Text.Json;
using RigLang.Editing;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Tests.Support;

namespace RigLang.LanguageServer.Tests;

/// <summary>The line above rigs and trips, and the report behind it.</summary>
public class ReportTests : IAsyncLifetime
{
    private const string A = "file:///w/a%20b.rig";
    private const string ReportOfCoast = "riglang-report:/rig%20coast.md?file%3A%2F%2F%2Fw%2Fa%2520b.rig";
    private RunningServer _server = null!;

    public async Task InitializeAsync()
    {
        _server = await RunningServer.StartAsync(JsonDocument.Parse(
            """{"workspace":{"textDocumentContent":{},"codeLens":{"refreshSupport":true}},"window":{"showDocument":{"support":true}}}""").RootElement);
        await _server.OpenAsync(A, "rig coast\n", 3);
        await _server.NextSetAsync();
    }

    public async Task DisposeAsync() => await _server.DisposeAsync();

    [Fact]
    public async Task The_words_of_a_line_are_made_when_it_comes_into_view()
    {
        _server.Workspace.Answers.Lenses = [new LineLens(FakeAnswers.At(0, 4, 9), "rig coast")];
        var lens = (await _server.Client.ResultAsync("textDocument/codeLens", new { textDocument = new { uri = A } }))[0];
        lens.GetRawText().Should().Be("""{"range":{"start":{"line":0,"character":4},"end":{"line":0,"character":9}},"data":{"uri":"file:///w/a%20b.rig","subject":"rig coast"}}""");

        (await _server.Client.ResultAsync("codeLens/resolve", lens)).GetProperty("command").GetRawText().Should().Be(
            """{"title":"rig coast in 10 characters","command":"riglang.openReport","arguments":["file:///w/a%20b.rig","rig coast"]}""");
    }

    [Fact]
    public async Task The_command_answers_the_report_and_has_it_shown()
    {
        var answer = await _server.Client.ResultAsync("workspace/executeCommand", new { command = "riglang.openReport", arguments = new[] { A, "rig coast" } });
        answer.GetProperty("uri").GetString().Should().Be(ReportOfCoast);
        answer.GetProperty("text").GetString().Should().Be("# rig coast\nrig coast\n");
        (await _server.Client.NextAsync("window/showDocument")).GetRawText().Should().Be($$"""{"uri":"{{ReportOfCoast}}","takeFocus":true}""");
    }

    [Theory]
    [InlineData("riglang.other", """["file:///w/a.rig"]""")]
    [InlineData("riglang.openReport", "[]")]
    [InlineData("riglang.openReport", "[5]")]
    public async Task A_command_that_makes_no_sense_is_refused(string command, string arguments) =>
        (await _server.Client.ErrorAsync("workspace/executeCommand", new { command, arguments = JsonDocument.Parse(arguments).RootElement })).Should().Be(-32602);

    [Fact]
    public async Task A_virtual_document_follows_the_text_it_reports_on()
    {
        (await ContentAsync(ReportOfCoast)).Should().Be("# rig coast\nrig coast\n");
        await _server.ReplaceAsync(A, "rig coast # two\n", 4);
        (await _server.Client.NextAsync("workspace/textDocumentContent/refresh")).GetRawText().Should().Be($$"""{"uri":"{{ReportOfCoast}}"}""");
        (await ContentAsync(ReportOfCoast)).Should().Be("# rig coast\nrig coast # two\n");
    }

    [Fact]
    public async Task A_client_without_virtual_documents_asks_for_the_text()
    {
        var answer = await _server.Client.ResultAsync("riglang/report", new { textDocument = new { uri = A } });
        answer.GetProperty("text").GetString().Should().Be("# a b.rig\nrig coast\n");
        answer.GetProperty("uri").GetString().Should().Be("riglang-report:/report.md?file%3A%2F%2F%2Fw%2Fa%2520b.rig");
    }

    [Theory]
    [InlineData("file:///w/a.rig")]
    [InlineData("riglang-report:/rig%20coast.md")]
    [InlineData("riglang-report:/rig%20quarry.md?file%3A%2F%2F%2Fw%2Fa%2520b.rig")]
    [InlineData("riglang-report:/report.md?file%3A%2F%2F%2Fw%2Fnobody.rig")]
    public async Task What_is_no_report_says_so(string uri) => (await _server.Client.ErrorAsync("workspace/textDocumentContent", new { uri })).Should().Be(-32803);

    [Theory]
    [InlineData("file:///w/a b.rig", "rig coast")]
    [InlineData("untitled:Untitled-1", null)]
    [InlineData("file:///c%3A/ü/%23.rig", "trip crêpe")]
    public void A_report_uri_is_read_back(string document, string? subject) => ReportUri.Read(ReportUri.Of(document, subject)).Should().Be((document, subject));

    private async Task<string> ContentAsync(string uri) => (await _server.Client.ResultAsync("workspace/textDocumentContent", new { uri })).GetProperty("text").GetString()!;
}
