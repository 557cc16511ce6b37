using System.Collections.Immutable;
using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;
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
    [InlineData("vehicle v\n    wheelbase 2.94$0 m ± 1 cm", "Ask for it: write `?` in place of the value", "vehicle v\n    wheelbase ?  # was 2.94 m ± 1 cm")]
    [InlineData("vehicle v\n    wheelbase 2.94$0 m # plate", "Ask for it: write `?` in place of the value", "vehicle v\n    wheelbase ? # plate")]
    [InlineData("vehicle v\n    wheelbase 2.94 m,$0\n    overhang 1 m,\n    height 2 m", "Mend every `comma-in-line` in this file (2)", "vehicle v\n    wheelbase 2.94 m\n    overhang 1 m\n    height 2 m")]
    [InlineData("vehicle V\n    wheelbase .9$0 m\n    overhang 1 m,\n    height 2,500 m", "Mend whatever is written wrong and can mean one thing only", "vehicle v\n    wheelbase 0.9 m\n    overhang 1 m\n    height 2,500 m")]
    public void What_mends_more_than_one_thing_leaves_the_rest_alone(string text, string title, string after) => A_fix_leaves_what_its_title_says(text, title, after);

    [Fact]
    public void A_number_that_cures_is_solved_for()
    {
        const string Text = """
            vehicle van
                wheelbase 2.94 m
                axle front
                    carries 1195 kg
                axle rear
                    carries 1105 kg
                    axle-rating 1150 kg
                aboard nothing
            load all
                on vehicle
                    item tools 90 kg at 2.50 m behind front-axle
            rig bare
                vehicle v$0an
                load all
            """;
        // By hand: 90 kg at 2.50 m put 76.5 kg on the rear axle; 45 kg are allowed, so the tools may lie 1.47 m behind the front axle, or weigh 52.9 kg.
        var workspace = new TestWorkspace(Text);
        var cures = Fixes(workspace).Where(change => change.Sort == ChangeSort.Cure).ToList();
        cures.Select(cure => cure.Title).Should().Equal("Take 38 kg out of tools: axle rear 1149 kg of 1150 kg", "Leave tools behind (90 kg): axle rear 1105 kg of 1150 kg");
        cures[0].IsPreferred.Should().BeTrue();
        cures[0].Cures.Should().ContainSingle(finding => finding.Check.Slug == "axle-over-rating");
        workspace.TextAfter(cures[0].Edits).Should().Be(workspace.Marked.Text.Replace("90 kg", "52 kg", StringComparison.Ordinal));
        workspace.TextAfter(cures[1].Edits).Should().NotContain("tools");
    }

    [Fact]
    public void Extracting_lines_of_a_load_changes_no_result()
    {
        const string Text = """
            vehicle van
                wheelbase 2.94 m
                overhang 1.09 m
                gross-rating 3000 kg
                axle front
                    carries 1195 kg
                axle rear
                    carries 1105 kg
                aboard nothing
            load autumn "All of it"
                on vehicle
                    item driver 84 kg at 1.42 m behind front-axle
                    item b$0ikes 40 kg at 3 m behind front-axle # two
                on trailer
                    item tent 60 kg at axle
            rig coast
                vehicle van
                load autumn
            rig bare like coast
                without load autumn
            """;
        var workspace = new TestWorkspace(Text, ("other.rig", "use \"main.rig\"\nrig far\n    vehicle van\n    load autumn\n"));
        var before = Verdicts(workspace);
        var change = Fixes(workspace).Should().ContainSingle(change => change.Sort == ChangeSort.Extract).Subject;
        change.Title.Should().Be("Make a load `autumn-bikes` of item bikes");
        foreach (var file in change.Edits.GroupBy(edit => edit.Place.File))
        {
            var text = file.Key == TestWorkspace.Main ? workspace.Marked.Text : "use \"main.rig\"\nrig far\n    vehicle van\n    load autumn\n";
            workspace.Workspace.Open(file.Key, TestWorkspace.Apply(text, file.Select(edit => new TextReplacement(edit.Place.Range, edit.NewText))));
        }

        Verdicts(workspace).Should().Be(before);
        workspace.Service.Outline(TestWorkspace.Main, default).Select(entry => entry.Name).Should().Equal("van", "autumn", "autumn-bikes", "coast", "bare");
        workspace.TextAfter(change.Edits.Where(edit => edit.Place.File == TestWorkspace.Main)).Should().Contain("""
            load autumn-bikes
                on vehicle
                    item bikes 40 kg at 3 m behind front-axle # two
            rig coast
                vehicle van
                load autumn
                load autumn-bikes
            rig bare like coast
                without load autumn
                without load autumn-bikes
            """);
    }

    [Theory]
    [InlineData("load l\n    on vehicle\n        item$0 x 17 kg at front-axle", "it is all the load has")]
    [InlineData("load l\n    on vehicle\n        item$0 x 17 kg at front-axle\n        item y 17 kg at front-axle\nload m like l", "the heir would lose it")]
    public void No_load_is_made(string text, string why) => Fixes(new TestWorkspace(text)).Should().NotContain(change => change.Sort == ChangeSort.Extract, why);

    [Theory]
    [InlineData("wheelbase", "vehicle van", "Write the estimate out: `yaw-inertia ")]
    [InlineData("yaw-inertia             ?", "yaw-inertia             ?", "Write the estimate out: ")]
    public void An_estimate_is_written_out_with_its_half_width_and_the_comment_that_it_is_one(string question, string caret, string title)
    {
        var lines = Examples.Read("people-carrier/1-van.rig").Split('\n').Where(line => !line.Contains("yaw-inertia", StringComparison.Ordinal)).ToList();
        if (question == caret)
        {
            lines.Insert(lines.FindIndex(line => line.Contains("wheelbase", StringComparison.Ordinal)), "    " + question);
        }

        var file = new FileId($"{Examples.Folder}/people-carrier/1-van.rig");
        var workspace = Examples.Open();
        workspace.Open(file, string.Join('\n', lines));
        var line = lines.FindIndex(text => text.Contains(caret, StringComparison.Ordinal));
        var place = new LinePosition(line, lines[line].IndexOf(caret, StringComparison.Ordinal) + caret.Length);
        var change = workspace.Current.Changes(file, new LineRange(place, place), default).First(change => change.Title.StartsWith(title, StringComparison.Ordinal));
        change.Edits.Should().ContainSingle().Which.NewText.Should().MatchRegex(@"\d kg·m² ± 10 %  # estimate: mass × distance of its centre");
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
        var fix = workspace.Service.Changes(TestWorkspace.Main, new LineRange(at, at), default).Single(fix => fix.Title.StartsWith("Accept `magn"));
        fix.Edits.Should().ContainSingle().Which.NewText.Should().Be("\r\n\tallow magnitude-unlikely because \"\"");
    }

    [Fact]
    public void What_no_reason_makes_right_can_not_be_accepted() =>
        Fixes(new TestWorkspace("rig r\n    vehicle nob$0ody")).Should().NotContain(fix => fix.Title.StartsWith("Accept"));

    private static string Verdicts(TestWorkspace workspace) => string.Join("|", new[] { (TestWorkspace.Main, "rig coast"), (TestWorkspace.Main, "rig bare"), (new FileId("/rigs/other.rig"), "rig far") }
        .Select(rig => workspace.Service.Hover(rig.Item1, workspace.Service.Outline(rig.Item1, default).First(entry => rig.Item2 == "rig " + entry.Name).NameRange.Start, default)!.Markdown));

    private static ImmutableArray<OfferedChange> Fixes(TestWorkspace workspace) =>
        workspace.Service.Changes(TestWorkspace.Main, new LineRange(workspace.Marked.At, workspace.Marked.At), default);
}
