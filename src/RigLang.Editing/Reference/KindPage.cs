using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax;

namespace RigLang.Editing.Reference;

/// <summary>The page of one kind of declaration: its facts, block by block.</summary>
internal static class KindPage
{
    public const string Signs =
        "Need: *yes* is wanted for the first verdict, axle loads and ratings; *for results* is asked for by the results that read it; – is never asked for. " +
        "Without it: what stands in when the line is missing; *none* means that results which need it say *not computed*. ⟂ may stand several times.";

    public static ReferencePage Of(DeclarationKind kind)
    {
        var root = Vocabulary.Root(kind);
        var page = new PageText().Heading(1, $"{kind.Keyword()} NAME").Paragraph(Phrase.Sentence(root.Meaning))
            .Paragraph($"Opened in the first column: `{kind.Keyword()} NAME like OTHER \"Title\"`; `like` and the title may be left out.").Paragraph(Signs);
        FactTable.Add(page, root.Facts);
        foreach (var block in Vocabulary.Blocks.Where(block => block.Kind == kind && block.Parent is not null))
        {
            page.Heading(2, $"in {block.Keyword}").Paragraph(Phrase.Sentence(block.Meaning));
            FactTable.Add(page, block.Facts);
        }

        if (kind == DeclarationKind.Practice)
        {
            AddPractices(page);
        }

        return new ReferencePage($"{ReferencePages.Folder}/{kind.Keyword()}.md", page.Paragraph("At home in every block besides: [`expect`, `allow`, `note`, `without`](everywhere.md).").ToString());
    }

    private static void AddPractices(PageText page)
    {
        page.Heading(2, "What can be assumed").Paragraph("Any fact that something stands in for, by its keyword, and these figures that belong to no rig:");
        FactTable.Add(page, FigureFacts.Block.Facts);
        page.Heading(2, "Built in").Paragraph("Every file sees these; a rig that names neither is checked against ratings and physics alone.").Code(BuiltInPractices.Text);
    }
}
