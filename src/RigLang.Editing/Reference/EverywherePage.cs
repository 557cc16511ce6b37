using RigLang.Model.Facts;

namespace RigLang.Editing.Reference;

/// <summary>The page of what is at home in every block.</summary>
internal static class EverywherePage
{
    public static ReferencePage Make()
    {
        var page = new PageText().Heading(1, "At home everywhere").Paragraph("These keywords may stand in every declaration and every block.").Paragraph(KindPage.Signs);
        FactTable.Add(page, EverywhereFacts.Block.Facts);
        return new ReferencePage($"{ReferencePages.Folder}/everywhere.md", page.ToString());
    }
}
