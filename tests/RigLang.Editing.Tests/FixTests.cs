using System.Collections.Immutable;
using RigLang.Editing.Tests.Support;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>Changes that are offered, and what they leave.</summary>
public class FixTests
{
    [Theory]
    [InlineData("vehicle v\n    wheelbas$0 2.94 m", "Write `wheelbase`", "vehicle v\n    wheelbase 2.94 m")]
    [InlineData("vehicle v\n    wheelbase 2.94$0 m", "Convert to 115.7 in", "vehicle v\n    wheelbase 115.7 in")]
    [InlineData("vehicle v\n    wheelbase $0157 in ± 1 in", "Convert to 3.99 m ± 0.03 m", "vehicle v\n    wheelbase 3.99 m ± 0.03 m")]
    [InlineData(
        "vehicle v\n    wheelbase 2$09 m\n    axle front\n        carries 1195 kg\n\nrig x",
        "Accept `magnitude-unlikely` with a reason",
        "vehicle v\n    wheelbase 29 m\n    axle front\n        carries 1195 kg\n    allow magnitude-unlikely because \"\"\n\nrig x")]
    [InlineData("vehicle v\n    allow magni$0tude-unlikely because \"x\" \n    wheelbase 2.94 m", "Delete the line", "vehicle v\n    wheelbase 2.94 m")]
    public void A_fix_leaves_what_its_title_says(string text, string title, string after)
    {
        var workspace = new TestWorkspace(text);
        var fix = Fixes(workspace).Should().ContainSingle(fix => fix.Title == title).Subject;
        workspace.TextAfter(fix.Edits).Should().Be(after);
    }

    [Theory]
    [InlineData("load l\n    on vehicle\n        item x 2 x 17$0 kg at 1 m behind front-axle", "a sum stays a sum")]
    [InlineData("vehicle v\n    body mp$0v", "a word has no unit")]
    public void No_conversion_is_offered(string text, string why) =>
        Fixes(new TestWorkspace(text)).Should().NotContain(fix => fix.Title.StartsWith("Convert"), why);

    [Fact]
    public void Accepting_keeps_the_line_breaks_of_the_file()
    {
        var workspace = new TestWorkspace("vehicle v");
        workspace.Workspace.Change(TestWorkspace.Main, [(null, "vehicle v\r\n\twheelbase 29 m\r\n")]);
        var at = new LinePosition(1, 12);
        var fix = workspace.Service.Fixes(TestWorkspace.Main, new LineRange(at, at), default).Single(fix => fix.Title.StartsWith("Accept `magn"));
        fix.Edits.Should().ContainSingle().Which.NewText.Should().Be("\r\n\tallow magnitude-unlikely because \"\"");
    }

    [Fact]
    public void What_no_reason_makes_right_can_not_be_accepted() =>
        Fixes(new TestWorkspace("rig r\n    vehicle nob$0ody")).Should().NotContain(fix => fix.Title.StartsWith("Accept"));

    private static ImmutableArray<EditorFix> Fixes(TestWorkspace workspace) =>
        workspace.Service.Fixes(TestWorkspace.Main, new LineRange(workspace.Marked.At, workspace.Marked.At), default);
}
