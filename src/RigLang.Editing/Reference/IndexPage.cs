using RigLang.Model.Declaring;

namespace RigLang.Editing.Reference;

/// <summary>The way into the reference.</summary>
internal static class IndexPage
{
    public static ReferencePage Make() => new($"{ReferencePages.Folder}/README.md", new PageText().Heading(1, "Reference")
        .Paragraph("Made from the declarations in the program; `dotnet run --project src/RigLang.Cli -- reference --write .` makes it again. How the language works is told in [language.md](../language.md).")
        .Bullets(
        [
            .. DeclarationKinds.All.Select(kind => $"[{kind.Keyword()}]({kind.Keyword()}.md): {Vocabulary.Root(kind).Meaning}"),
            "[at home everywhere](everywhere.md): tests, accepted findings, notes, lines taken away",
            "[results](results.md): everything that is computed, with formulas and sources",
            "[quantities and units](units.md)",
            "[checks](../checks/README.md): everything that can be reported",
        ]).ToString());
}
