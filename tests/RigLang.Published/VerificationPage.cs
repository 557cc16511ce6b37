using System.Globalization;
using System.Text;

namespace RigLang.Published;

/// <summary>The page docs/verification.md, made from the checks.</summary>
public static class VerificationPage
{
    /// <summary>The page as Markdown with line feeds.</summary>
    public static string Render()
    {
        var page = new StringBuilder();
        page.Append("# Verification: the numbers against the outside world\n\n")
            .Append("Made from the checks in `tests/RigLang.Published`; don't edit by hand. Every row is one published number that the program must give within the\n")
            .Append("tolerance, which is the source's own rounding unless the row says otherwise. *Read*: the named text or data was read. *From memory*: inputs and result are recalled from\n")
            .Append("the named source and the arithmetic between them closes.\n\n")
            .Append(CultureInfo.InvariantCulture, $"{Catalogue.All.Count} checks.\n");
        foreach (IGrouping<string, PublishedCheck> model in Catalogue.All.GroupBy(check => check.Model))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n## {Capital(model.Key)}\n");
            foreach (IGrouping<(string Source, Provenance Provenance), PublishedCheck> source in model.GroupBy(check => (check.Source, check.Provenance)))
            {
                page.Append(CultureInfo.InvariantCulture, $"\n{Capital(source.Key.Source)} ({Words(source.Key.Provenance)}).\n\n")
                    .Append("| inputs | quantity | expected | got | tolerance |\n| --- | --- | --- | --- | --- |\n");
                foreach (PublishedCheck check in source)
                    page.Append(CultureInfo.InvariantCulture, $"| {check.Inputs} | {check.Quantity} | {check.Expected:G8} | {check.Got:G8} | ±{check.Tolerance:G2} |\n");
            }
        }

        page.Append("\n## Outside programs\n\n")
            .Append("Besides the tables, three programs of other people are asked during the tests, over whole ranges: GNU units for every unit of the table and the standard\n")
            .Append("atmosphere by geopotential altitude, python3-fluids for the US Standard Atmosphere 1976 by geometric altitude (−400 to 5600 m), psychrolib for humid air (−20 to\n")
            .Append("45 °C, dry to saturated, 700 to 1013 hPa). `tests/run` installs what is missing; what can't be had is named, and its checks are counted as skipped.\n")
            .Append("\n## Read, but not computed\n\n| source | says | why no model gives it |\n| --- | --- | --- |\n");
        foreach (var (source, says, why) in NotComputed.All)
            page.Append(CultureInfo.InvariantCulture, $"| {source} | {says} | {why} |\n");
        return page.ToString();
    }

    private static string Words(Provenance provenance) => provenance switch
    {
        Provenance.Read => "read",
        Provenance.ValueFromMemory => "from memory",
        _ => "common practice",
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
