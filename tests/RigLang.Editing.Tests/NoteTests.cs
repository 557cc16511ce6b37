using RigLang.Editing.Tests.Support;
using RigLang.Editing.Workspaces;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>Computed values behind lines.</summary>
public class NoteTests
{
    private static readonly LineRange Everything = new(default, new LinePosition(9999, 0));

    public static TheoryData<string> Paths => ["people-carrier/6-rigs.rig", "people-carrier/trips/saddle.rig", "people-carrier/weighings/2026-09-05.rig", "pick-up/5-rigs.rig", "overloaded/too-much.rig", "firewood/3-saturday.rig"];

    [Theory]
    [InlineData("people-carrier/6-rigs.rig", "    trailer ", @"^tongue \d+\.\d %$")]
    [InlineData("people-carrier/6-rigs.rig", "    load ", @"^payload \d+ kg left$")]
    [InlineData("people-carrier/6-rigs.rig", "rig coast \"", @"^[a-z, ]+: \d+ kg left$")]
    [InlineData("pick-up/5-rigs.rig", "rig tour \"", @" lb left$")]
    [InlineData("overloaded/too-much.rig", "rig too-much", @" over$")]
    [InlineData("people-carrier/trips/saddle.rig", "    leg quarry", @"^\d\d:\d\d, \d+ % left \(estimated\)$")]
    [InlineData("people-carrier/trips/saddle.rig", "    stop quarry", @"^until \d\d:\d\d, \d+ % aboard")]
    [InlineData("people-carrier/weighings/2026-09-05.rig", "        scale trailer", @"^model \d+ kg$")]
    public void A_line_has_its_value_behind_it(string path, string line, string label)
    {
        var lines = Examples.Read(path).ReplaceLineEndings("\n").Split('\n');
        var number = Array.FindIndex(lines, text => text.StartsWith(line, StringComparison.Ordinal));
        Notes(path).Single(note => note.Position.Line == number).Label.Should().MatchRegex(label);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Labels_are_short_stand_behind_the_text_and_say_why_in_the_tooltip(string path)
    {
        var lines = Examples.Read(path).ReplaceLineEndings("\n").Split('\n');
        Notes(path).Should().NotBeEmpty().And.OnlyContain(note => note.Label.Length < 40 && note.Tooltip.Length > note.Label.Length && lines[note.Position.Line].Substring(0, note.Position.Character).TrimEnd().Length == note.Position.Character);
    }

    [Fact]
    public void Only_what_is_on_the_screen_is_computed()
    {
        var workspace = Examples.Open("people-carrier/6-rigs.rig");
        var file = new FileId($"{Examples.Folder}/people-carrier/6-rigs.rig");
        workspace.Current.InlayNotes(file, new LineRange(new LinePosition(0, 0), new LinePosition(1, 0)), default).Should().BeEmpty();
    }

    [Fact]
    public void Results_are_shown_in_the_units_that_are_set()
    {
        var workspace = Examples.Open("people-carrier/6-rigs.rig");
        var file = new FileId($"{Examples.Folder}/people-carrier/6-rigs.rig");
        workspace.Units = UnitHabit.Us;
        workspace.Current.InlayNotes(file, Everything, default).Select(note => note.Label).Should().Contain(label => label.StartsWith("payload ") && label.EndsWith(" lb left"));
    }

    [Fact]
    public void A_rig_that_lacks_facts_has_no_note_rather_than_a_guess()
    {
        var workspace = new TestWorkspace("vehicle van\n    wheelbase 2.94 m\n\ntrailer wren\n    mass 1790 kg\n\nrig r\n    vehicle van\n    trailer wren");
        workspace.Service.InlayNotes(TestWorkspace.Main, Everything, default).Should().BeEmpty();
    }

    private static System.Collections.Immutable.ImmutableArray<InlayNote> Notes(string path) =>
        Examples.Open(path).Current.InlayNotes(new FileId($"{Examples.Folder}/{path}"), Everything, default);
}
