using RigLang.Editing;
using RigLang.LanguageServer.Tests.Support;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Tests;

/// <summary>What goes over the wire for the features that are about names and paths.</summary>
public class NameFeatureTests : IAsyncLifetime
{
    private const string A = "file:///w/a.rig";
    private const string InA = """{"uri":"file:///w/a.rig","range":{"start":{"line":1,"character":12},"end":{"line":1,"character":15}}}""";
    private static readonly object Document = new { uri = A };
    private static readonly object Position = new { line = 1, character = 13 };
    private static readonly object Place = new { textDocument = Document, position = Position };
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
    public async Task Highlights_tell_where_a_name_is_made_from_where_it_is_used()
    {
        Answers.Highlights = [new NameHighlight(FakeAnswers.At(0, 4, 9), IsMade: true), new NameHighlight(FakeAnswers.At(1, 12, 15), IsMade: false)];

        (await AskAsync("textDocument/documentHighlight", Place)).Should().Be(
            """[{"range":{"start":{"line":0,"character":4},"end":{"line":0,"character":9}},"kind":3},{"range":{"start":{"line":1,"character":12},"end":{"line":1,"character":15}},"kind":2}]""");
    }

    [Fact]
    public async Task A_type_definition_is_a_place()
    {
        Answers.Places = [new FilePlace(FileA, FakeAnswers.At(1, 12, 15))];
        (await AskAsync("textDocument/typeDefinition", Place)).Should().Be($"[{InA}]");
    }

    [Fact]
    public async Task A_rename_begins_with_the_name_and_ends_with_edits_of_several_files()
    {
        Answers.RenameTarget = new RenameTarget(FakeAnswers.At(1, 12, 15), "van");
        Answers.Rename = name => new RenameAnswer([(new FilePlace(FileA, FakeAnswers.At(1, 12, 15)), name), (new FilePlace(FileB, FakeAnswers.At(0, 8, 11)), name)]);

        (await AskAsync("textDocument/prepareRename", Place)).Should().Be("""{"range":{"start":{"line":1,"character":12},"end":{"line":1,"character":15}},"placeholder":"van"}""");
        (await AskAsync("textDocument/rename", new { textDocument = Document, position = Position, newName = "bus" })).Should().Be(
            """{"documentChanges":[{"textDocument":{"uri":"file:///w/a.rig","version":3},"edits":[{"range":{"start":{"line":1,"character":12},"end":{"line":1,"character":15}},"newText":"bus"}]},"""
            + """{"textDocument":{"uri":"file:///w/b%20c.rig","version":null},"edits":[{"range":{"start":{"line":0,"character":8},"end":{"line":0,"character":11}},"newText":"bus"}]}]}""");
    }

    [Fact]
    public async Task A_rename_that_is_refused_says_why()
    {
        Answers.RenameTarget = new RenameTarget(FakeAnswers.At(1, 12, 15), "common-na", "it is built in");
        Answers.Rename = _ => RenameAnswer.Refused("there is another one");

        var prepared = (await _server.Client.RequestAsync("textDocument/prepareRename", Place)).GetProperty("error");
        var renamed = (await _server.Client.RequestAsync("textDocument/rename", new { textDocument = Document, position = Position, newName = "bus" })).GetProperty("error");

        prepared.GetRawText().Should().Be("""{"code":-32803,"message":"it is built in"}""");
        renamed.GetRawText().Should().Be("""{"code":-32803,"message":"there is another one"}""");
    }

    [Fact]
    public async Task Where_no_name_stands_there_is_nothing_to_rename() => (await AskAsync("textDocument/prepareRename", Place)).Should().Be("null");

    [Fact]
    public async Task Linked_places_come_with_what_a_name_may_hold_while_it_is_typed()
    {
        Answers.Ranges = [FakeAnswers.At(1, 8, 14), FakeAnswers.At(2, 9, 15)];
        var linked = await _server.Client.ResultAsync("textDocument/linkedEditingRange", Place);
        linked.GetProperty("ranges").GetRawText().Should().Be("""[{"start":{"line":1,"character":8},"end":{"line":1,"character":14}},{"start":{"line":2,"character":9},"end":{"line":2,"character":15}}]""");
        System.Text.RegularExpressions.Regex.Match("crow's-nest #", linked.GetProperty("wordPattern").GetString()!).Value.Should().Be("crow's-nest");
        Answers.Ranges = [];
        (await AskAsync("textDocument/linkedEditingRange", Place)).Should().Be("null");
    }

    [Fact]
    public async Task Selections_are_nested_and_there_is_one_for_each_place_asked_about()
    {
        Answers.Ranges = [FakeAnswers.At(1, 12, 15), FakeAnswers.At(1, 4, 15)];
        (await AskAsync("textDocument/selectionRange", new { textDocument = Document, positions = new[] { Position, new { line = 99, character = 0 } } })).Should().Be(
            """[{"range":{"start":{"line":1,"character":12},"end":{"line":1,"character":15}},"parent":{"range":{"start":{"line":1,"character":4},"end":{"line":1,"character":15}}}},"""
            + """{"range":{"start":{"line":99,"character":0},"end":{"line":99,"character":0}}}]""");
    }

    [Fact]
    public async Task A_link_names_the_file_it_opens()
    {
        Answers.Links = [new FileLink(FakeAnswers.At(0, 5, 12), FileB, "Open b c.rig")];
        (await AskAsync("textDocument/documentLink", new { textDocument = Document })).Should().Be(
            """[{"range":{"start":{"line":0,"character":5},"end":{"line":0,"character":12}},"target":"file:///w/b%20c.rig","tooltip":"Open b c.rig"}]""");
    }

    [Fact]
    public async Task Names_of_the_workspace_come_with_what_they_are_part_of()
    {
        Answers.Names = [new NamedPlace("van", "a.rig", OutlineSort.Vehicle, new FilePlace(FileA, FakeAnswers.At(1, 12, 15))), new NamedPlace("wren", "", OutlineSort.Trailer, new FilePlace(FileA, default))];
        (await AskAsync("workspace/symbol", new { query = "va" })).Should().Be("""[{"name":"van","kind":5,"location":""" + InA + ""","containerName":"a.rig"}]""");
    }

    [Fact]
    public async Task Files_that_get_another_name_change_the_paths_that_name_them()
    {
        Answers.Places = [new FilePlace(FileA, FakeAnswers.At(0, 5, 12))];
        (await AskAsync("workspace/willRenameFiles", new { files = new[] { new { oldUri = "file:///w/b.rig", newUri = "file:///w/d%20e.rig" } } })).Should().Be(
            """{"documentChanges":[{"textDocument":{"uri":"file:///w/a.rig","version":3},"edits":[{"range":{"start":{"line":0,"character":5},"end":{"line":0,"character":12}},"newText":"d e.rig"}]}]}""");
        Answers.Places = [];
        (await AskAsync("workspace/willRenameFiles", new { files = new[] { new { oldUri = "file:///w/b.rig", newUri = "file:///w/d.rig" } } })).Should().Be("null");
    }

    [Fact]
    public async Task Files_renamed_or_deleted_in_the_editor_are_looked_at_again()
    {
        await _server.Client.NotifyAsync("workspace/didRenameFiles", new { files = new[] { new { oldUri = "file:///w/b.rig", newUri = "file:///w/c.rig" } } });
        await _server.Client.NotifyAsync("workspace/didDeleteFiles", new { files = new[] { new { uri = "file:///w/parts" } } });
        await AskAsync("textDocument/documentLink", new { textDocument = Document });
        _server.Workspace.Log.TakeLast(2).Should().Equal("disk /w/b.rig /w/c.rig", "disk /w/parts");
    }

    private async Task<string> AskAsync(string method, object parameters) => (await _server.Client.ResultAsync(method, parameters)).GetRawText();
}
