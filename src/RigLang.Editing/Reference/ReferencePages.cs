using RigLang.Model.Declaring;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Reference;

/// <summary>Everything in the repository that is made from the declarations: the reference, a page for each check, and the words of the colouring grammar.</summary>
public static class ReferencePages
{
    public const string CheckFolder = "docs/checks";

    public const string Folder = "docs/reference";

    public static IEnumerable<ReferencePage> All() =>
    [
        IndexPage.Make(),
        .. DeclarationKinds.All.Select(KindPage.Of),
        EverywherePage.Make(),
        ResultsPage.Make(),
        UnitsPage.Make(),
        .. CheckPages.All(),
        .. EditorGrammar.All(),
    ];

    /// <summary>The name of a check's page in its folder: <c>RL301-axle-over-rating.md</c>.</summary>
    public static string NameOf(CheckDeclaration check) => $"{check.Code}-{check.Slug}.md";
}
