using RigLang.Model.Declaring;

namespace RigLang.Editing.Reference;

/// <summary>The facts of a block as a table, with their other names under it.</summary>
internal static class FactTable
{
    public static PageText Add(PageText page, IEnumerable<FactDeclaration> facts)
    {
        var all = facts.ToList();
        page.Table(["keyword", "behind it", "need", "for instance", "meaning", "without it"], all.Select(Row));
        var aliases = all.Where(fact => !fact.Aliases.IsEmpty).Select(fact => $"{string.Join(", ", fact.Aliases.Select(alias => alias.Replace('-', ' ')))}: `{fact.Keyword}`").ToList();
        return aliases.Count == 0 ? page : page.Paragraph("Other words for these, known to completion and to the message about an unknown keyword:").Bullets(aliases);
    }

    private static string[] Row(FactDeclaration fact) =>
    [
        $"`{fact.Keyword}`" + (fact.Repeats ? " ⟂" : ""),
        Form(fact),
        fact.Need switch
        {
            Need.ForVerdict => "yes",
            Need.ForResults => "for results",
            _ => "–",
        },
        fact.Example.Length == 0 ? "" : $"`{fact.Example}`",
        fact.Meaning,
        fact.Else,
    ];

    private static string Form(FactDeclaration fact) => fact.Signature.Slots switch
    {
        [] => "nothing",
        [{ Lead: null, Form: var form, IsOptional: false }] => form.Words,
        _ => $"`{fact.Signature.Words}`",
    };
}
