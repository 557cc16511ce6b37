using System.Text;

namespace RigLang.Editing.Reference;

/// <summary>The text of a page, part by part.</summary>
internal sealed class PageText
{
    private readonly StringBuilder text = new();

    public PageText Heading(int level, string heading) => Add(new string('#', level) + " " + heading);

    public PageText Paragraph(string paragraph) => paragraph.Length == 0 ? this : Add(paragraph);

    public PageText Code(string code) => Add("```rig\n" + code.TrimEnd('\n') + "\n```");

    public PageText Bullets(IEnumerable<string> items) => Paragraph(string.Join("\n", items.Select(item => "- " + item)));

    public PageText Table(string[] head, IEnumerable<string[]> rows)
    {
        var lines = rows.Select(Row).Prepend(Row([.. head.Select(_ => "---")])).Prepend(Row(head));
        return Add(string.Join("\n", lines));
    }

    public override string ToString() => text.ToString();

    // A bar inside a cell would end it, even in code.
    private static string Row(string[] cells) => "| " + string.Join(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal))) + " |";

    private PageText Add(string part)
    {
        text.Append(text.Length == 0 ? "" : "\n").Append(part.ReplaceLineEndings("\n")).Append('\n');
        return this;
    }
}
