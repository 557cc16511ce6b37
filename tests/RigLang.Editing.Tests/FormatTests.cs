using RigLang.Editing.Tests.Support;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>The formatter's lines reach the editor as the smallest replacements.</summary>
public class FormatTests
{
    private const string Untidy = "vehicle v   \n  wheelbase   2.94 m\n  axle front\n     carries 1195 kg # °\n\nrig r\n\tvehicle v";

    [Fact]
    public void A_file_is_set_right()
    {
        var edits = new TestWorkspace(Untidy).Service.Format(TestWorkspace.Main, null, default);
        TestWorkspace.Apply(Untidy, edits).Should().Be("vehicle v\n    wheelbase   2.94 m\n    axle front\n        carries 1195 kg # °\n\nrig r\n    vehicle v\n");
    }

    [Fact]
    public void A_stretch_is_set_right_and_nothing_else()
    {
        var range = new LineRange(new LinePosition(1, 0), new LinePosition(2, 0));
        var edits = new TestWorkspace(Untidy).Service.Format(TestWorkspace.Main, range, default);
        edits.Should().ContainSingle().Which.Should().Be(new TextReplacement(new LineRange(new LinePosition(1, 2), new LinePosition(1, 2)), "  "));
    }

    [Fact]
    public void A_tidy_file_needs_nothing() =>
        Examples.Open("people-carrier/6-rigs.rig").Current.Format(new($"{Examples.Folder}/people-carrier/6-rigs.rig"), null, default).Should().BeEmpty();
}
