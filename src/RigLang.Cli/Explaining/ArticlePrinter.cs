using RigLang.Cli.Terminals;

namespace RigLang.Cli.Explaining;

/// <summary>Prints an article.</summary>
internal static class ArticlePrinter
{
    private const int Indent = 2;

    public static void Print(Printout print, Article article)
    {
        print.Wrapped(Indent, new Piece(article.Word, Ink.Strong), "  ", new Piece(article.What, Ink.Faint));
        print.Wrapped(Indent, new string(' ', Indent), article.Text);
        var width = article.Parts.Where(part => !part.IsCode).Select(part => Cells.Width(part.Label)).DefaultIfEmpty(0).Max() + 2;
        foreach (var part in article.Parts)
        {
            if (part.IsCode)
            {
                print.Line();
                print.Line(new string(' ', Indent), new Piece(part.Label, Ink.Faint));
                foreach (var line in part.Text.TrimEnd().Split('\n'))
                {
                    print.Line((new string(' ', Indent + 4) + line.TrimEnd('\r')).TrimEnd());
                }
            }
            else
            {
                print.Wrapped(Indent + width, new string(' ', Indent), new Piece(Cells.PadRight(part.Label, width), Ink.Faint), part.Text);
            }
        }
    }
}
