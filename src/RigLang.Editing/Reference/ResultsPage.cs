using RigLang.Analysis.Results;
using RigLang.Syntax;

namespace RigLang.Editing.Reference;

/// <summary>The page of all results, by what they belong to.</summary>
internal static class ResultsPage
{
    public static ReferencePage Make()
    {
        var page = new PageText().Heading(1, "Results").Paragraph(
            "What is computed, by the names that `expect`, `limit` and `? for` take. A result whose facts are not all there says *not computed: needs …*; one that an " +
            "estimate went into says *estimated*, wherever it shows.");
        foreach (var scope in Enum.GetValues<ResultScope>())
        {
            var results = Catalogue.Of(scope).ToList();
            if (results.Count > 0)
            {
                page.Heading(2, $"Of {Words(scope)}");
                results.ForEach(result => Add(page, result));
            }
        }

        return new ReferencePage($"{ReferencePages.Folder}/results.md", page.ToString());
    }

    private static void Add(PageText page, IResult result) => page.Heading(3, result.Name)
        .Paragraph($"{Phrase.Sentence(result.Title)} {Phrase.Sentence(result.Meaning)}")
        .Bullets([$"measured as: {result.Kind.Name}", $"= {result.Formula}", $"source: {result.Source}"]);

    private static string Words(ResultScope scope) => scope switch
    {
        ResultScope.Rig => "a rig",
        ResultScope.Axle => "an axle of a rig",
        ResultScope.Trip => "a trip",
        ResultScope.Leg => "a leg",
        ResultScope.Stop => "a stop",
        ResultScope.Weighing => "a weighing",
        ResultScope.Reading => "a reading of the scale",
        ResultScope.RunSet => "a rig's runs together",
        _ => "a run",
    };
}
