using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>Findings stand where an editor marks them, counted in UTF-16 units of the line.</summary>
public class FindingTests
{
    [Theory]
    [InlineData("""
        vehicle van
            wheelbase 2.94
                      ^^^^ unit-missing
        """)]
    [InlineData("""
        vehicle van
            wheelbas 2.94 m
            ^^^^^^^^ unknown-keyword
        """)]
    [InlineData("""
        # °C, 🚐 and a letter with its accent behind it: é
        vehicle van "🚐 °" # 🚐
            note "🚐🚐 é °" 5 kg
                             ^^^^ argument-left-over
            yaw-inertia 4 kg·m² 7
                                ^ argument-left-over
        """)]
    [InlineData("""
        rig coast
            vehicle van
                    ^^^ name-unknown
        """)]
    public void A_finding_is_marked_where_it_stands(string marked)
    {
        var workspace = new TestWorkspace(marked);
        Marks(workspace).Should().Contain(workspace.Marked.Marks.Select(mark => (mark.Range, mark.Words)));
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Other_line_breaks_change_no_place(string lineBreak)
    {
        var marked = MarkedText.Parse("""
            vehicle van
                wheelbase 2.94
                          ^^^^ unit-missing

            rig coast
                vehicle bus
                        ^^^ name-unknown
            """);
        var workspace = new TestWorkspace(marked.Text);
        workspace.Workspace.Change(TestWorkspace.Main, [(null, marked.Text.ReplaceLineEndings(lineBreak))]);
        Marks(workspace).Should().Contain(marked.Marks.Select(mark => (mark.Range, mark.Words)));
    }

    [Fact]
    public void A_finding_names_the_other_line_it_is_about()
    {
        var workspace = new TestWorkspace("""
            vehicle van
                wheelbase 2.94 m
                wheelbase 2.95 m
            """);
        var finding = workspace.Service.Findings(TestWorkspace.Main, default).Single(finding => finding.Check.Slug == "said-twice");
        finding.Related.Should().ContainSingle().Which.Place.Range.Start.Line.Should().Be(1);
    }

    [Fact]
    public void An_accepted_finding_is_not_shown()
    {
        const string text = """
            vehicle van
                wheelbase 29 m
            """;
        var before = new TestWorkspace(text);
        before.Service.Findings(TestWorkspace.Main, default).Should().Contain(finding => finding.Check.Slug == "magnitude-unlikely");

        var after = new TestWorkspace(text + "\n    allow magnitude-unlikely because \"a road train\"");
        after.Service.Findings(TestWorkspace.Main, default).Should().NotContain(finding => finding.Check.Slug == "magnitude-unlikely" || finding.Check.Slug == "allows-nothing");
    }

    [Fact]
    public void Lines_added_above_move_every_place_with_them()
    {
        var workspace = new TestWorkspace("""
            vehicle van
                wheelbase 2.94

            rig coast
                vehicle bus
            """);
        var before = Marks(workspace);
        workspace.Workspace.Change(TestWorkspace.Main, [(new LineRange(default, default), "# one\n# two\n")]);
        Marks(workspace).Should().Equal(before.Select(mark => (Down(mark.Range, 2), mark.Slug)));
    }

    [Fact]
    public void A_file_that_is_not_known_has_none() =>
        new TestWorkspace("vehicle van").Service.Findings(new FileId("/elsewhere/x.rig"), default).Should().BeEmpty();

    private static List<(LineRange Range, string Slug)> Marks(TestWorkspace workspace) =>
        [.. workspace.Service.Findings(TestWorkspace.Main, default).Select(finding => (finding.Range, finding.Check.Slug))];

    private static LineRange Down(LineRange range, int lines) =>
        new(new LinePosition(range.Start.Line + lines, range.Start.Character), new LinePosition(range.End.Line + lines, range.End.Character));
}
