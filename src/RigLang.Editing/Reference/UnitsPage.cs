using RigLang.Quantities;

namespace RigLang.Editing.Reference;

/// <summary>The page of quantities and units.</summary>
internal static class UnitsPage
{
    // People write these; which of several units they mean only they know.
    private static readonly string[] Refused = ["ton", "gal", "mpg", "hp", "cwt", "qt", "pt", "lb·ft"];

    public static ReferencePage Make()
    {
        var page = new PageText().Heading(1, "Quantities and units")
            .Paragraph("Every quantity has its unit. A unit is one word without blanks; `*` is read as `·`, `^2` and `2` as `²`, and what is read is left as it was typed.")
            .Heading(2, "Kinds of quantity").Table(["kind", "units offered", "shown in metric", "shown in US units"], QuantityKinds.All.Select(Row))
            .Heading(2, "Units").Paragraph("Units may be put together: `N·m`, `kg·m²`, `lbf/mph²`, `AUD/kWh`. Prices take any code of ISO 4217.")
            .Table(["unit", "name", "also written"], Units.All.Select(unit => new[] { Code(unit.Symbol), unit.Name, Others(unit) }))
            .Heading(2, "Refused, with the choices").Paragraph("These mean different things in different places.")
            .Bullets(Refused.Select(word => $"`{word}`: write {string.Join(" or ", Choices(word).Select(Code))}"));
        return new ReferencePage($"{ReferencePages.Folder}/units.md", page.ToString());
    }

    private static string[] Row(QuantityKind kind) =>
    [
        kind.Name,
        kind.BareOnly ? "a bare number" : string.Join(", ", kind.ExampleUnits.Select(unit => Code(unit.Symbol))) + (kind.AllowsBare ? ", or a bare number" : ""),
        Own(kind, DisplaySystem.Metric),
        Own(kind, DisplaySystem.Us),
    ];

    private static string Own(QuantityKind kind, DisplaySystem system) =>
        kind.IsDuration ? "hours and minutes"
        : kind.UnitFor(system).Currency is not null ? "its currency"
        : Code(kind.UnitFor(system).Symbol);

    private static string Others(Unit unit) => string.Join(", ", UnitTable.Spellings.Where(spelling => spelling != unit.Symbol && UnitTable.Find(spelling) == unit).Select(Code));

    private static IReadOnlyList<string> Choices(string word) => UnitTable.TryRead(word, null, out _, out var problem) ? [] : problem.Suggestions;

    private static string Code(string symbol) => symbol.Length == 0 ? "none" : $"`{symbol}`";
}
