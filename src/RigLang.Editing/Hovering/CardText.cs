using System.Text;

namespace RigLang.Editing.Hovering;

/// <summary>
/// The text of a hover, paragraph by paragraph. Markdown whose signs can be left out: rows of figures are a block of fixed width, so that they stand in columns
/// with and without it.
/// </summary>
internal sealed class CardText
{
    private readonly StringBuilder text = new();

    public bool IsEmpty => text.Length == 0;

    public CardText Heading(string what, string? title = null) => Paragraph(title is null ? $"**{what}**" : $"**{what}** “{title}”");

    public CardText Paragraph(string paragraph)
    {
        if (paragraph.Length > 0)
        {
            text.Append(IsEmpty ? "" : "\n\n").Append(paragraph);
        }

        return this;
    }

    public CardText Bullets(IEnumerable<string> items, int most = int.MaxValue)
    {
        var all = items.ToList();
        var shown = all.Take(all.Count > most + 1 ? most : all.Count).Select(item => "- " + item).ToList();
        if (shown.Count < all.Count)
        {
            shown.Add($"- and {all.Count - shown.Count} more");
        }

        return Paragraph(string.Join("\n", shown));
    }

    /// <summary>Rows in columns: the first on the left, those between on the right of their width, the last as it is.</summary>
    public CardText Table(IEnumerable<string[]> rows)
    {
        var all = rows.ToList();
        if (all.Count == 0)
        {
            return this;
        }

        var widths = Enumerable.Range(0, all.Max(row => row.Length)).Select(column => all.Where(row => row.Length > column + 1 || column == 0).Select(row => row[column].Length).DefaultIfEmpty().Max()).ToArray();
        var lines = all.Select(row => string.Join("  ", row.Select((cell, column) => column == row.Length - 1 ? cell : column == 0 ? cell.PadRight(widths[0]) : cell.PadLeft(widths[column]))).TrimEnd());
        return Paragraph("```text\n" + string.Join("\n", lines) + "\n```");
    }

    public override string ToString() => text.ToString();
}
