using RigLang.Analysis.Checks;
using RigLang.Editing.Hovering;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Reference;

/// <summary>A page for each check, and the list of them.</summary>
internal static class CheckPages
{
    public static IEnumerable<ReferencePage> All() => AnalysisChecks.Declarations.Select(Of).Prepend(Index());

    private static ReferencePage Of(CheckDeclaration check)
    {
        var page = new PageText().Heading(1, $"{check.Code} {check.Slug}").Paragraph(check.Summary)
            .Bullets(
            [
                $"severity: {CheckCard.Word(check.Severity)}",
                $"since: {check.Since}",
                .. check.Source is { } source ? [$"source: {source}"] : Array.Empty<string>(),
                check.CanBeAllowed ? $"accepted by: `allow {check.Slug} because \"…\"` in the declaration or block" : "can't be accepted: no reason makes it right",
            ])
            .Heading(2, "Why it matters").Paragraph(check.Why)
            .Heading(2, "Reported").Code(check.Bad)
            .Heading(2, "Not reported").Code(check.Good)
            .Heading(2, "What to do").Paragraph(check.Fix);
        if (AnalysisChecks.WithLevers(check.Code).SelectMany(curable => curable.Cures).Select(lever => lever.Words).Distinct().ToList() is { Count: > 0 } levers)
        {
            page.Paragraph($"Fixes are computed: {string.Join("; ", levers)}. The least change is found that makes this check silent, in the unit and digits of the file, and the title says what comes of it. What leaves no new error is offered first.");
        }

        return new ReferencePage($"{ReferencePages.CheckFolder}/{ReferencePages.NameOf(check)}", page.ToString());
    }

    private static ReferencePage Index()
    {
        var page = new PageText().Heading(1, "Checks").Paragraph(
            "Everything that can be reported. Ratings and law give errors, practice gives warnings, the rest is a note. A finding is accepted, with its reason, by an `allow` line; codes and names stay as they are for good.");
        foreach (var family in AnalysisChecks.Declarations.GroupBy(check => check.Family))
        {
            page.Heading(2, family.Key.ToString()).Table(
                ["code", "name", "severity", "what is reported"],
                family.Select(check => new[] { check.Code, $"[{check.Slug}]({ReferencePages.NameOf(check)})", CheckCard.Word(check.Severity), check.Summary }));
        }

        return new ReferencePage($"{ReferencePages.CheckFolder}/README.md", page.ToString());
    }
}
