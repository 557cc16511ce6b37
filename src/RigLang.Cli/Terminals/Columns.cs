namespace RigLang.Cli.Terminals;

/// <summary>A table without lines: a heading, then rows; the first column to the left, numbers to the right.</summary>
public sealed class Columns(params string[] headings)
{
    private const int Indent = 2;
    private const int Gap = 2;
    private readonly List<string[]> rows = [];

    public void Add(params string[] row) => rows.Add(row);

    /// <summary>A first column that would push the row over the edge is broken, the rest of it standing below.</summary>
    public void Print(Printout print)
    {
        if (rows.Count == 0)
        {
            return;
        }

        // A column in which nothing is said isn't shown.
        var shown = Enumerable.Range(0, headings.Length).Where(column => column == 0 || rows.Exists(row => row[column].Length > 0)).ToArray();
        var widths = shown.ToDictionary(column => column, column => rows.Append(headings).Max(row => Cells.Width(row[column])));
        var others = shown.Skip(1).Sum(column => widths[column] + Gap);
        widths[0] = Math.Min(widths[0], Math.Max(8, print.Width - Indent - others));
        PrintRow(print, shown, widths, headings, Ink.Faint);
        foreach (var row in rows)
        {
            PrintRow(print, shown, widths, row, Ink.Plain);
        }
    }

    private static void PrintRow(Printout print, int[] shown, Dictionary<int, int> widths, string[] row, Ink ink)
    {
        var first = Wrapping.Lines([row[0]], widths[0], 0).ToList();
        var rest = string.Concat(shown.Skip(1).Select(column => new string(' ', Gap) + Cells.PadLeft(row[column], widths[column])));
        var name = string.Concat(first[0].Select(piece => piece.Text));
        print.Line(new Piece((new string(' ', Indent) + Cells.PadRight(name, widths[0]) + rest).TrimEnd(), ink));
        foreach (var more in first.Skip(1))
        {
            print.Line([new Piece(new string(' ', Indent), ink), .. more]);
        }
    }
}
