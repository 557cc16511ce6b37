using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Model.Tests.Linking;

public sealed class UseTests
{
    private static readonly FileId A = new("/rigs/a.rig");

    private static IEnumerable<string> Slugs(Workspace workspace, FileId file) => Reading.Findings(workspace.Link(file)!).Select(finding => finding.Check.Slug);

    [Fact]
    public void It_shows_what_is_written_in_the_other_file()
    {
        var workspace = Reading.Workspace(("a.rig", "use \"parts/vans.rig\"\n"), ("parts/vans.rig", "vehicle van\n    wheelbase 2.94 m\n"));

        workspace.Find(A, DeclarationKind.Vehicle, "van")!.Block.Si("wheelbase").Should().Be(2.94);
        Slugs(workspace, A).Should().BeEmpty();
    }

    [Fact]
    public void It_does_not_show_what_that_file_uses_in_turn()
    {
        var workspace = Reading.Workspace(("a.rig", "use \"b.rig\"\n"), ("b.rig", "use \"c.rig\"\n"), ("c.rig", "vehicle van\n"));

        workspace.Find(A, DeclarationKind.Vehicle, "van").Should().BeNull();
    }

    [Fact]
    public void A_circle_is_harmless()
    {
        var workspace = Reading.Workspace(("a.rig", "use \"b.rig\"\nvehicle one\n"), ("b.rig", "use \"a.rig\"\nvehicle two\n"));

        workspace.Find(A, DeclarationKind.Vehicle, "two").Should().NotBeNull();
        Slugs(workspace, A).Should().BeEmpty();
    }

    [Fact]
    public void Like_reaches_into_a_used_file_and_its_names_are_looked_up_there()
    {
        var workspace = Reading.Workspace(
            ("a.rig", "use \"b.rig\"\nload mine like theirs\n"),
            ("b.rig", "use \"c.rig\"\nload theirs like first\n"),
            ("c.rig", "load first\n    on vehicle\n        item driver 75 kg at front-axle\n"));

        workspace.Find(A, DeclarationKind.Load, "mine")!.Block.Blocks.Should().ContainSingle();
        Slugs(workspace, A).Should().BeEmpty();
    }

    [Theory]
    [InlineData("use \"none.rig\"\n", "used-file-missing")]
    [InlineData("use \"../outside.rig\"\n", "used-file-outside")]
    [InlineData("use \"../../../../../etc/passwd\"\n", "used-file-outside")]
    [InlineData("use \"/etc/passwd\"\n", "used-file-outside")]
    public void A_path_that_leads_nowhere_is_reported(string text, string slug)
    {
        Slugs(Reading.Workspace(("a.rig", text)), A).Should().Equal(slug);
    }

    [Fact]
    public void The_same_name_in_two_files_in_sight_is_an_error_at_the_use()
    {
        var workspace = Reading.Workspace(("a.rig", "use \"b.rig\"\nvehicle van\n"), ("b.rig", "vehicle van\n"));

        Slugs(workspace, A).Should().Equal("name-taken");
    }

    [Fact]
    public void Unsaved_text_wins_over_the_stored_file()
    {
        var stored = Reading.Workspace(("a.rig", "use \"b.rig\"\n"), ("b.rig", "vehicle van\n    wheelbase 2.94 m\n"));
        stored.Find(A, DeclarationKind.Vehicle, "van")!.Block.Si("wheelbase").Should().Be(2.94);

        var edited = stored.WithOpen(RigFile.Parse(new FileId("/rigs/b.rig"), "vehicle van\n    wheelbase 3.1 m\n"));

        edited.Find(A, DeclarationKind.Vehicle, "van")!.Block.Si("wheelbase").Should().Be(3.1);
        edited.WithClosed(new FileId("/rigs/b.rig")).Find(A, DeclarationKind.Vehicle, "van")!.Block.Si("wheelbase").Should().Be(2.94);
    }

    [Fact]
    public void A_next_state_keeps_what_it_shares()
    {
        var text = "vehicle van\n    wheelbase 2.94 m\n\nload full\n    on vehicle\n\nload light like full\n";
        var first = Reading.Workspace().WithOpen(RigFile.Parse(A, text));
        var before = first.Link(A)!.Declarations;
        var changed = first.OpenFile(A)!.Syntax.WithChange(new(1, 14), new(1, 18), "3.00");

        var after = first.WithOpen(first.OpenFile(A)!.With(changed)).Link(A)!.Declarations;

        after[0].Should().NotBeSameAs(before[0]);
        after[0].Block.Si("wheelbase").Should().Be(3.0);
        after[1].Should().BeSameAs(before[1]);
        after[2].Should().BeSameAs(before[2]);
    }

    [Fact]
    public void A_next_state_keeps_what_is_like_a_declaration_of_another_file()
    {
        var text = "use \"b.rig\"\n\nvehicle van like base\n\nvehicle other\n    wheelbase 2.94 m\n";
        var first = Reading.Workspace(("b.rig", "vehicle base\n    wheelbase 3.1 m\n")).WithOpen(RigFile.Parse(A, text));
        var before = first.Link(A)!.Declarations;
        var changed = first.OpenFile(A)!.Syntax.WithChange(new(5, 14), new(5, 18), "3.00");

        var after = first.WithOpen(first.OpenFile(A)!.With(changed)).Link(A)!.Declarations;

        after[0].Block.Si("wheelbase").Should().Be(3.1);
        after[0].Should().BeSameAs(before[0]);
    }
}
