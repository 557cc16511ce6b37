using System.Collections.Immutable;
using RigLang.Editing.Tests.Support;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>Lines that ask for a value: the hint, the hover, the fixes, the findings.</summary>
public class QuestionTests
{
    // 300 kg at 1.2 m behind the rear axle take 300 × 1.2 / 3.0 = 120 kg off the front; a share q comes back: 1250 − 120 (1 − q).
    private const string Rig = """
        vehicle v
            wheelbase 3.00 m
            overhang 1.20 m
            axle front
                carries 1250 kg
            axle rear
                carries 1150 kg
            aboard nothing

        trailer t
            mass 2500 kg
            tongue 300 kg
            coupling-to-axle 5.00 m
            aboard nothing

        hitch bars
            type weight-distributing
            mass 0 kg

        rig r
            vehicle v
            trailer t
            hitch bars
            restoration
        """;

    private static readonly LineRange Everything = new(default, new LinePosition(9999, 0));

    [Fact]
    public void The_value_stands_behind_its_question()
    {
        Notes(new TestWorkspace(Rig + " ? for front-axle-load = 1190 kg")).Should().Contain("is 50 %");
        Notes(new TestWorkspace(Rig + " ? for front-axle-load = 1500 kg within 0 % .. 100 %")).Should().Contain("out of reach: 1250.0 kg at best");
    }

    [Fact]
    public void It_moves_with_what_is_typed()
    {
        var workspace = new TestWorkspace(Rig + " ? for front-axle-load = 1190 kg");
        Notes(workspace).Should().Contain("is 50 %");

        // 1260 − 120 (1 − q) = 1190.
        workspace.Workspace.Change(TestWorkspace.Main, [(null, (Rig + " ? for front-axle-load = 1190 kg").Replace("carries 1250 kg", "carries 1260 kg"))]);

        Notes(workspace).Should().Contain("is 41.67 %");
    }

    [Fact]
    public void The_fix_writes_the_value_and_keeps_the_wish_as_a_test()
    {
        var workspace = new TestWorkspace(Rig + " ?$0 for front-axle-load = 1190 kg");
        var fixes = workspace.Service.Changes(TestWorkspace.Main, new LineRange(workspace.Marked.At, workspace.Marked.At), default);

        var both = fixes.Single(fix => fix.Title == "Write 50 %, and expect front-axle-load = 1190 kg");
        both.IsPreferred.Should().BeTrue();
        workspace.TextAfter(both.Edits).Should().Be(Rig + " 50 %\n    expect front-axle-load = 1190 kg");
        workspace.TextAfter(fixes.Single(fix => fix.Title == "Write 50 % (front-axle-load = 1190 kg)").Edits).Should().Be(Rig + " 50 %");
        new TestWorkspace(workspace.TextAfter(both.Edits)).Service.Findings(TestWorkspace.Main, default).Should().NotContain(finding => finding.Check.Slug == "expectation-missed");
    }

    [Theory]
    [InlineData("1187 kg")]
    [InlineData("1193.4 kg")]
    [InlineData("2650 lb")]
    public void The_written_value_still_meets_the_wish(string wish)
    {
        var workspace = new TestWorkspace(Rig + $" ?$0 for front-axle-load = {wish}");
        var fix = workspace.Service.Changes(TestWorkspace.Main, new LineRange(workspace.Marked.At, workspace.Marked.At), default).First(fix => fix.Title.Contains("and expect"));

        new TestWorkspace(workspace.TextAfter(fix.Edits)).Service.Findings(TestWorkspace.Main, default).Should().NotContain(finding => finding.Check.Slug == "expectation-missed");
    }

    [Fact]
    public void The_hover_says_what_was_found_and_with_what()
    {
        new TestWorkspace(Rig + " $0? for front-axle-load = 1190 kg").Hover().Should().Contain("**50 %** gives front-axle-load").And.Contain("1190.0 kg");
        new TestWorkspace(Rig + " $0? for front-axle-load = 1500 kg").Hover().Should().Contain("Out of reach");
        new TestWorkspace(Rig + " $0? for tongue-load = 150 kg").Hover().Should().Contain("doesn't rest on");
    }

    [Fact]
    public void Findings_come_at_once_and_again_when_the_answer_is_there()
    {
        var service = new TestWorkspace(Rig + " ? for front-axle-load = 1500 kg").Service;

        service.HasOpenQuestions(TestWorkspace.Main).Should().BeTrue();
        service.FindingsAtOnce(TestWorkspace.Main, default).Should().NotContain(finding => finding.Check.Slug == "question-out-of-reach", "nothing was solved yet");
        service.Findings(TestWorkspace.Main, default).Should().Contain(finding => finding.Check.Slug == "question-out-of-reach");
        service.HasOpenQuestions(TestWorkspace.Main).Should().BeFalse();
        service.FindingsAtOnce(TestWorkspace.Main, default).Should().Contain(finding => finding.Check.Slug == "question-out-of-reach");
    }

    [Fact]
    public void A_part_says_what_each_rig_finds()
    {
        var text = (Rig + " 50 %\n    load l\n\nrig other like r\n    trailer u\n\ntrailer u like t\n    tongue 250 kg\n\nload l\n    on trailer\n        item stones ? for tongue-ratio = 14 % at 2.0 m ahead of axle");

        // 300 + 0.4 m = 0.14 (2500 + m)  →  m = 50 / 0.26 = 192.3; with 250 kg: 100 / 0.26 = 384.6.
        Notes(new TestWorkspace(text)).Should().Contain(label => label.Contains("192.3 kg") && label.Contains("rig r"));
    }

    private static ImmutableArray<string> Notes(TestWorkspace workspace) => [.. workspace.Service.InlayNotes(TestWorkspace.Main, Everything, default).Select(note => note.Label)];
}
