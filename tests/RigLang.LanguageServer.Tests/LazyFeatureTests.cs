using System.Text.Json;
using RigLang.Editing;
using RigLang.LanguageServer.Tests.Support;
using RigLang.LanguageServer.Translate;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.LanguageServer.Tests;

/// <summary>Answers that come in two steps, for clients that ask for the second; and answers that are what changed.</summary>
public class LazyFeatureTests : IAsyncLifetime
{
    private const string A = "file:///w/a.rig";
    private static readonly object Document = new { uri = A };
    private static readonly object Position = new { line = 1, character = 4 };
    private static readonly object Stretch = new { start = new { line = 0, character = 0 }, end = new { line = 5, character = 0 } };
    private static readonly FileId FileA = RunningServer.File(A);
    private const string LazyClient = """
        {"textDocument": {
            "completion": {"completionItem": {"documentationFormat": ["markdown"], "resolveSupport": {"properties": ["documentation", "detail"]}}},
            "inlayHint": {"resolveSupport": {"properties": ["tooltip"]}},
            "codeAction": {"codeActionLiteralSupport": {"codeActionKind": {"valueSet": ["quickfix"]}}, "dataSupport": true, "resolveSupport": {"properties": ["edit"]}},
            "signatureHelp": {"signatureInformation": {"documentationFormat": ["markdown"], "parameterInformation": {"labelOffsetSupport": true}}}
        }}
        """;

    private RunningServer _server = null!;

    private FakeAnswers Answers => _server.Workspace.Answers;

    public async Task InitializeAsync()
    {
        _server = await RunningServer.StartAsync(JsonDocument.Parse(LazyClient).RootElement);
        await _server.OpenAsync(A, "rig coast\n    vehicle van\n", 3);
        await _server.NextSetAsync();
    }

    public async Task DisposeAsync() => await _server.DisposeAsync();

    [Fact]
    public async Task Documentation_of_a_completion_comes_when_it_is_looked_at()
    {
        Answers.Completions = [Entry("axle", "An *axle*."), Entry("kg", "")];
        var items = (await _server.Client.ResultAsync("textDocument/completion", new { textDocument = Document, position = Position })).GetProperty("items");
        Answers.Completions = [];

        items[0].TryGetProperty("documentation", out _).Should().BeFalse();
        items[1].TryGetProperty("data", out _).Should().BeFalse("there is nothing more to ask for");
        var resolved = await _server.Client.ResultAsync("completionItem/resolve", items[0]);
        resolved.GetProperty("documentation").GetRawText().Should().Be("""{"kind":"markdown","value":"An *axle*."}""");
        resolved.GetProperty("textEdit").GetRawText().Should().Be(items[0].GetProperty("textEdit").GetRawText());
    }

    [Theory]
    [InlineData("""{"label":"axle"}""")]
    [InlineData("""{"label":"axle","data":{"list":99,"item":0}}""")]
    [InlineData("""{"label":"axle","data":"of another kind"}""")]
    public async Task An_item_that_nobody_knows_comes_back_as_it_is(string item) =>
        (await AskAsync("completionItem/resolve", JsonDocument.Parse(item).RootElement)).Should().Be(item);

    [Fact]
    public async Task The_tooltip_of_a_hint_is_written_when_it_is_looked_at()
    {
        var written = 0;
        Answers.Notes = [new InlayNote(new LinePosition(1, 15), "9.4 %", () => $"Tongue share {++written}")];
        var hint = (await _server.Client.ResultAsync("textDocument/inlayHint", new { textDocument = Document, range = Stretch }))[0];
        written.Should().Be(0);

        (await _server.Client.ResultAsync("inlayHint/resolve", hint)).GetProperty("tooltip").GetRawText().Should().Be("""{"kind":"markdown","value":"Tongue share 1"}""");

        Answers.Notes = [];
        (await AskAsync("inlayHint/resolve", hint)).Should().Be(hint.GetRawText(), "the line has no such hint any more");
    }

    [Fact]
    public async Task The_edits_of_an_action_are_worked_out_when_it_is_taken()
    {
        var worked = 0;
        Answers.Changes = [new OfferedChange("Make a load", ChangeSort.Extract, () =>
        {
            worked++;
            return [(new FilePlace(FileA, FakeAnswers.At(0, 0, 3)), "load")];
        })];
        var action = (await _server.Client.ResultAsync("textDocument/codeAction", new { textDocument = Document, range = Stretch, context = new { diagnostics = Array.Empty<object>() } }))[0];
        worked.Should().Be(0);

        (await _server.Client.ResultAsync("codeAction/resolve", action)).GetProperty("edit").GetRawText().Should().Be(
            """{"changes":{"file:///w/a.rig":[{"range":{"start":{"line":0,"character":0},"end":{"line":0,"character":3}},"newText":"load"}]}}""");

        await _server.ReplaceAsync(A, "rig other\n", 4);
        (await _server.Client.ErrorAsync("codeAction/resolve", action)).Should().Be(-32801, "its edits would be about another text");
    }

    [Fact]
    public async Task A_signature_says_what_it_is_at()
    {
        Answers.Signature = new SignatureCard("fill TANK LEVEL", "How full", [new SignaturePart(5, 9, "A tank"), new SignaturePart(10, 15, "A share")], 1);
        (await AskAsync("textDocument/signatureHelp", new { textDocument = Document, position = Position, context = new { triggerKind = 2, triggerCharacter = " ", isRetrigger = false } })).Should().Be(
            """{"signatures":[{"label":"fill TANK LEVEL","documentation":{"kind":"markdown","value":"How full"},"parameters":[{"label":[5,9],"documentation":{"kind":"markdown","value":"A tank"}},"""
            + """{"label":[10,15],"documentation":{"kind":"markdown","value":"A share"}}]}],"activeSignature":0,"activeParameter":1}""");
    }

    [Fact]
    public async Task A_line_of_one_part_has_its_signature_only_when_asked_for()
    {
        Answers.Signature = new SignatureCard("wheelbase VALUE", "", [new SignaturePart(10, 15, "A length")], 0);
        (await AskAsync("textDocument/signatureHelp", new { textDocument = Document, position = Position, context = new { triggerKind = 2, triggerCharacter = " ", isRetrigger = false } })).Should().Be("null");
        (await AskAsync("textDocument/signatureHelp", new { textDocument = Document, position = Position, context = new { triggerKind = 1, isRetrigger = false } })).Should().NotBe("null");
    }

    [Fact]
    public async Task Tokens_come_as_what_changed_since_the_last_answer_or_whole()
    {
        Answers.Tokens = [Token(0, 0, 3), Token(1, 4, 7), Token(2, 4, 7)];
        var first = (await _server.Client.ResultAsync("textDocument/semanticTokens/full", new { textDocument = Document })).GetProperty("resultId").GetString();

        Answers.Tokens = [Token(0, 0, 3), Token(1, 4, 9), Token(1, 14, 2), Token(2, 4, 7)];
        var delta = await _server.Client.ResultAsync("textDocument/semanticTokens/full/delta", new { textDocument = Document, previousResultId = first });
        // [0,0,3,0,0, 1,4,7,0,0, 1,4,7,0,0] becomes [0,0,3,0,0, 1,4,9,0,0, 0,10,2,0,0, 1,4,7,0,0]
        delta.GetProperty("edits").GetRawText().Should().Be("""[{"start":7,"deleteCount":1,"data":[9,0,0,0,10,2]}]""");

        var again = await _server.Client.ResultAsync("textDocument/semanticTokens/full/delta", new { textDocument = Document, previousResultId = delta.GetProperty("resultId").GetString() });
        again.GetProperty("edits").GetArrayLength().Should().Be(0);

        (await _server.Client.ResultAsync("textDocument/semanticTokens/full/delta", new { textDocument = Document, previousResultId = first })).TryGetProperty("data", out _)
            .Should().BeTrue("what the client has isn't known any more");
        (await AskAsync("textDocument/semanticTokens/range", new { textDocument = Document, range = new { start = new { line = 1, character = 0 }, end = new { line = 1, character = 99 } } }))
            .Should().Be("""{"data":[1,4,9,0,0,0,10,2,0,0]}""");
    }

    [FsCheck.Xunit.Property]
    public void A_difference_turns_the_one_list_into_the_other(uint[] before, uint[] now)
    {
        var data = before.ToList();
        foreach (var edit in MeaningTokens.Difference(before, now))
        {
            data.RemoveRange((int)edit.Start, (int)edit.DeleteCount);
            data.InsertRange((int)edit.Start, edit.Data);
        }

        data.Should().Equal(now);
    }

    [Fact]
    public async Task The_line_that_was_left_is_put_in_order_and_no_other()
    {
        Answers.Format = [new TextReplacement(FakeAnswers.At(0, 3, 5), " "), new TextReplacement(FakeAnswers.At(1, 0, 1), "    ")];
        (await AskAsync("textDocument/onTypeFormatting", new { textDocument = Document, position = new { line = 1, character = 4 }, ch = "\n", options = new { tabSize = 4, insertSpaces = true } }))
            .Should().Be("""[{"range":{"start":{"line":0,"character":3},"end":{"line":0,"character":5}},"newText":" "}]""");
        (await AskAsync("textDocument/onTypeFormatting", new { textDocument = Document, position = new { line = 0, character = 0 }, ch = "\n", options = new { tabSize = 4, insertSpaces = true } })).Should().Be("[]");
    }

    private static MeaningToken Token(int line, int character, int length) => new(line, character, length, MeaningSort.Keyword, IsDeclaration: false);

    private static CompletionEntry Entry(string label, string documentation) =>
        new(label, CompletionSort.Fact, "", documentation, new TextReplacement(FakeAnswers.At(1, 4, 4), label), IsSnippet: false, "");

    private async Task<string> AskAsync(string method, object parameters) => (await _server.Client.ResultAsync(method, parameters)).GetRawText();
}
