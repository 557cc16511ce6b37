using System.Collections.Immutable;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Showing;

/// <summary>Rows under a heading.</summary>
public sealed record Section(string Title, ImmutableArray<Row> Rows);

/// <summary>One thing shown: what it is, its value, and what there is to say of it.</summary>
public sealed record Row(string Title, string Value, string Remark = "", Ink Ink = Ink.Plain);

/// <summary>Prints sections with their values in line.</summary>
internal static class Sheet
{
    private const int Indent = 2;
    private const int Gap = 2;
    private const int WidestValue = 24;

    public static void Print(Printout print, IEnumerable<Section> sections)
    {
        var filled = sections.Where(section => !section.Rows.IsEmpty).ToList();
        if (filled.Count == 0)
        {
            return;
        }

        var rows = filled.SelectMany(section => section.Rows).ToList();
        var title = rows.Max(row => Cells.Width(row.Title)) + Gap;
        var value = rows.Where(row => Cells.Width(row.Value) <= WidestValue).Select(row => Cells.Width(row.Value)).DefaultIfEmpty(0).Max();
        foreach (var section in filled)
        {
            print.Line();
            print.Line(new Piece(section.Title, Ink.Strong));
            foreach (var row in section.Rows)
            {
                Print(print, row, title, value);
            }
        }
    }

    private static void Print(Printout print, Row row, int title, int value)
    {
        var lead = new string(' ', Indent) + Cells.PadRight(row.Title, title);
        if (row.Value.Length == 0)
        {
            print.Wrapped(Indent + title, lead, new Piece(row.Remark, row.Ink == Ink.Plain ? Ink.Faint : row.Ink));
            return;
        }

        var shown = Cells.PadLeft(row.Value, value);
        print.Wrapped(Indent + title + value + Gap, lead, new Piece(shown, row.Ink), row.Remark.Length == 0 ? "" : new string(' ', Gap) + row.Remark);
    }
}
