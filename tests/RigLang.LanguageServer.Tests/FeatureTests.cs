using RigLang.Editing;
using RigLang.LanguageServer.Tests.Support;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.LanguageServer.Tests;

/// <summary>What goes over the wire for each feature, to the character, for a client that can do everything.</summary>
public class FeatureTests : IAsyncLifetime
{
    private const string A = "file:///w/a.rig";
    private static readonly object Document = new { uri = A };
    private static readonly object Position = new { line = 1, character = 4 };
    private static readonly object Stretch = new { start = new { line = 0, character = 0 }, end = new { line = 5, character = 0 } };
    private static readonly FileId FileA = RunningServer.File(A);
    private static readonly FileId FileB = new("/w/b c.rig");
    private RunningServer _server = null!;

    private FakeAnswers Answers => _server.Workspace.Answers;

    public async Task InitializeAsync()
    {
        _server = await RunningServer.StartAsync();
        await _server.OpenAsync(A, "rig coast\n    vehicle van\n", 3);
        await _server.NextSetAsync();
    }

    public async Task DisposeAsync() => await _server.DisposeAsync();

    [Fact]
    public async Task Hover_is_markdown_over_the_text_it_is_about()
    {
        Answers.Hover = (_, position, _) => new HoverCard(FakeAnswers.At(position.Line, position.Character, 11), "**wheelbase** 2.94 m");

        (await AskAsync("textDocument/hover", new { textDocument = Document, position = Position })).Should().Be(
            """{"contents":{"kind":"markdown","value":"**wheelbase** 2.94 m"},"range":{"start":{"line":1,"character":4},"end":{"line":1,"character":11}}}""");
    }

    [Fact]
    public async Task Completion_offers_edits_and_snippets()
    {
        Answers.Completions =
        [
            new CompletionEntry("axle", CompletionSort.Block, "block", "An *axle*.", new TextReplacement(FakeAnswers.At(1, 4, 6), "axle ${1:front}\n"), IsSnippet: true, "01"),
            new CompletionEntry("kg", CompletionSort.Unit, "", "", new TextReplacement(FakeAnswers.At(1, 4, 4), "kg"), IsSnippet: false, ""),
        ];

        (await AskAsync("textDocument/completion", new { textDocument = Document, position = Position, context = new { triggerKind = 1 } })).Should().Be(
            """{"isIncomplete":false,"items":[{"label":"axle","kind":9,"insertTextFormat":2,"textEdit":{"range":{"start":{"line":1,"character":4},"end":{"line":1,"character":6}},"newText":"axle ${1:front}\n"},"detail":"block","documentation":{"kind":"markdown","value":"An *axle*."},"sortText":"01"},"""
            + """{"label":"kg","kind":11,"insertTextFormat":1,"textEdit":{"range":{"start":{"line":1,"character":4},"end":{"line":1,"character":4}},"newText":"kg"}}]}""");
    }

    [Fact]
    public async Task Definition_and_references_name_files_by_their_uris()
    {
        Answers.Places = [new FilePlace(FileB, FakeAnswers.At(2, 8, 11)), new FilePlace(FileA, FakeAnswers.At(1, 12, 15))];
        const string InB = """{"uri":"file:///w/b%20c.rig","range":{"start":{"line":2,"character":8},"end":{"line":2,"character":11}}}""";
        const string InA = """{"uri":"file:///w/a.rig","range":{"start":{"line":1,"character":12},"end":{"line":1,"character":15}}}""";

        (await AskAsync("textDocument/definition", new { textDocument = Document, position = Position })).Should().Be($"[{InB},{InA}]");
        (await AskAsync("textDocument/references", new { textDocument = Document, position = Position, context = new { includeDeclaration = true } })).Should().Be($"[{InB},{InA}]");
        (await AskAsync("textDocument/references", new { textDocument = Document, position = Position, context = new { includeDeclaration = false } })).Should().Be($"[{InA}]");
    }

    [Fact]
    public async Task The_outline_is_nested_and_always_one_that_clients_accept()
    {
        var block = new OutlineEntry("", "", OutlineSort.Block, new LineRange(new(1, 4), new(2, 0)), FakeAnswers.At(9, 0, 3), []);
        Answers.Outline = (_, _) => [new OutlineEntry("coast", "rig", OutlineSort.Rig, new LineRange(new(0, 0), new(2, 0)), FakeAnswers.At(0, 4, 9), [block])];

        (await AskAsync("textDocument/documentSymbol", new { textDocument = Document })).Should().Be(
            """[{"name":"coast","kind":2,"range":{"start":{"line":0,"character":0},"end":{"line":2,"character":0}},"selectionRange":{"start":{"line":0,"character":4},"end":{"line":0,"character":9}},"detail":"rig","children":["""
            + """{"name":"(no name)","kind":8,"range":{"start":{"line":1,"character":4},"end":{"line":2,"character":0}},"selectionRange":{"start":{"line":1,"character":4},"end":{"line":1,"character":4}}}]}]""");
    }

    [Fact]
    public async Task Folds_are_whole_lines()
    {
        Answers.Folds = [new FoldStretch(0, 1, IsComment: false), new FoldStretch(3, 7, IsComment: true)];

        (await AskAsync("textDocument/foldingRange", new { textDocument = Document })).Should().Be("""[{"startLine":0,"endLine":1},{"startLine":3,"endLine":7,"kind":"comment"}]""");
    }

    [Fact]
    public async Task Hints_stand_off_the_text_and_tell_more_in_their_tooltip()
    {
        Answers.Notes = [new InlayNote(new LinePosition(1, 15), "9.4 %", () => "Tongue share"), new InlayNote(new LinePosition(5, 0), "0 kg", () => ""), new InlayNote(new LinePosition(99, 0), "far", () => "")];

        (await AskAsync("textDocument/inlayHint", new { textDocument = Document, range = Stretch })).Should().Be(
            """[{"position":{"line":1,"character":15},"label":"9.4 %","paddingLeft":true,"tooltip":{"kind":"markdown","value":"Tongue share"}},{"position":{"line":5,"character":0},"label":"0 kg","paddingLeft":true}]""");
    }

    [Fact]
    public async Task Semantic_tokens_are_numbered_from_the_one_before()
    {
        Answers.Tokens =
        [
            new MeaningToken(1, 12, 3, MeaningSort.Reference, IsDeclaration: false),
            new MeaningToken(0, 0, 3, MeaningSort.Keyword, IsDeclaration: false),
            new MeaningToken(0, 4, 5, MeaningSort.DeclarationName, IsDeclaration: true),
            new MeaningToken(0, 6, 2, MeaningSort.Sign, IsDeclaration: false), // inside the one before
            new MeaningToken(1, 4, 7, MeaningSort.Unknown, IsDeclaration: false),
        ];

        (await AskAsync("textDocument/semanticTokens/full", new { textDocument = Document })).Should().Be("""{"data":[0,0,3,0,0,0,4,5,1,1,1,12,3,3,0],"resultId":"1"}""");
    }

    [Fact]
    public async Task Formatting_answers_edits_of_the_whole_or_of_a_stretch()
    {
        Answers.Format = [new TextReplacement(FakeAnswers.At(1, 11, 12), "    "), new TextReplacement(FakeAnswers.At(8, 0, 1), "")];
        const string First = """{"range":{"start":{"line":1,"character":11},"end":{"line":1,"character":12}},"newText":"    "}""";
        const string Second = """{"range":{"start":{"line":8,"character":0},"end":{"line":8,"character":1}},"newText":""}""";
        var options = new { tabSize = 4, insertSpaces = true };

        (await AskAsync("textDocument/formatting", new { textDocument = Document, options })).Should().Be($"[{First},{Second}]");
        (await AskAsync("textDocument/rangeFormatting", new { textDocument = Document, range = Stretch, options })).Should().Be($"[{First}]");
    }

    [Fact]
    public async Task A_fix_comes_with_the_diagnostic_it_cures_and_versions_of_the_texts_it_edits()
    {
        var fix = Fix();
        Answers.Changes = [Cure(fix), new OfferedChange("Sort the items", ChangeSort.Rewrite, new FilePlace(FileA, FakeAnswers.At(0, 0, 0)), "x")];

        (await AskAsync("textDocument/codeAction", new { textDocument = Document, range = Stretch, context = new { diagnostics = Array.Empty<object>() } })).Should().Be(
            """[{"title":"Write 80 kg","kind":"quickfix","edit":{"documentChanges":[{"textDocument":{"uri":"file:///w/a.rig","version":3},"edits":[{"range":{"start":{"line":1,"character":4},"end":{"line":1,"character":11}},"newText":"80 kg"}]},"""
            + """{"textDocument":{"uri":"file:///w/b%20c.rig","version":null},"edits":[{"range":{"start":{"line":0,"character":0},"end":{"line":0,"character":0}},"newText":"# moved\n"}]}]}"""
            + ""","diagnostics":[{"range":{"start":{"line":1,"character":4},"end":{"line":1,"character":11}},"severity":2,"code":"RL301","source":"riglang","message":"this is bad","codeDescription":{"href":"https://docs.example/checks/RL301"},"data":{"check":"bad-line","fixes":["Write 80 kg"]}}],"isPreferred":true},"""
            + """{"title":"Sort the items","kind":"refactor.rewrite","edit":{"documentChanges":[{"textDocument":{"uri":"file:///w/a.rig","version":3},"edits":[{"range":{"start":{"line":0,"character":0},"end":{"line":0,"character":0}},"newText":"x"}]}]}}]""");
    }

    [Theory]
    [InlineData("quickfix", "Write 80 kg")]
    [InlineData("refactor", "Sort the items,Make a load")]
    [InlineData("refactor.extract", "Make a load")]
    [InlineData("", "Write 80 kg,Sort the items,Make a load,Mend the file")]
    [InlineData("source.fixAll", "Mend the file")]
    [InlineData("source.organizeImports", "")]
    [InlineData(null, "Write 80 kg,Sort the items,Make a load")]
    public async Task Only_the_kinds_asked_for_are_answered(string? only, string titles)
    {
        Answers.Changes =
        [
            Cure(Fix()),
            .. new[] { ("Sort the items", ChangeSort.Rewrite), ("Make a load", ChangeSort.Extract), ("Mend the file", ChangeSort.CureFile) }
                .Select(change => new OfferedChange(change.Item1, change.Item2, new FilePlace(FileA, FakeAnswers.At(0, 0, 0)), "x")),
        ];

        var actions = await _server.Client.ResultAsync(
            "textDocument/codeAction", new { textDocument = Document, range = Stretch, context = new { diagnostics = Array.Empty<object>(), only = only is null ? null : new[] { only } } });

        string.Join(',', actions.EnumerateArray().Select(a => a.GetProperty("title").GetString())).Should().Be(titles);
    }

    [Fact]
    public async Task A_diagnostic_has_its_page_related_places_and_tags()
    {
        var unused = FakeAnswers.Check("RL118", "unused-load", Syntax.Checks.Severity.Note);
        Answers.Findings = (_, _, _) =>
        [
            FakeAnswers.Finding(FakeAnswers.At(0, 4, 9), "no rig uses it", unused) with { Related = [new RelatedPlace(new FilePlace(FileB, FakeAnswers.At(4, 0, 3)), "the load it is like")] },
        ];

        await _server.ReplaceAsync(A, "x", 4);

        (await _server.NextSetAsync()).GetRawText().Should().Be(
            """{"uri":"file:///w/a.rig","diagnostics":[{"range":{"start":{"line":0,"character":4},"end":{"line":0,"character":9}},"severity":3,"code":"RL118","source":"riglang","message":"no rig uses it","codeDescription":{"href":"https://docs.example/checks/RL118"},"tags":[1],"relatedInformation":["""
            + """{"location":{"uri":"file:///w/b%20c.rig","range":{"start":{"line":4,"character":0},"end":{"line":4,"character":3}}},"message":"the load it is like"}],"data":{"check":"unused-load","fixes":[]}}],"version":4}""");
    }

    private static OfferedChange Cure(EditorFix fix) => new(fix.Title, ChangeSort.Cure, () => fix.Edits)
    {
        IsPreferred = fix.IsPreferred,
        Cures = [FakeAnswers.Finding(FakeAnswers.At(1, 4, 11)) with { Fixes = [fix] }],
    };

    private static EditorFix Fix() => new(
        "Write 80 kg", [(new FilePlace(FileA, FakeAnswers.At(1, 4, 11)), "80 kg"), (new FilePlace(FileB, FakeAnswers.At(0, 0, 0)), "# moved\n")], IsPreferred: true);

    private async Task<string> AskAsync(string method, object parameters) => (await _server.Client.ResultAsync(method, parameters)).GetRawText();
}
