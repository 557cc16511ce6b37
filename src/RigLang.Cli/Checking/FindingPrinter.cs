using RigLang.Cli.Terminals;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Cli.Checking;

/// <summary>Prints a finding: place, weight and name; what it says; the line with carets; other places; what would cure it.</summary>
public sealed class FindingPrinter(Printout print, Workspace workspace, Func<FileId, string> shown)
{
    private const int Indent = 2;

    public void Print(Finding finding)
    {
        PrintHead(finding);
        print.Wrapped(Indent, [new string(' ', Indent), finding.Message]);
        PrintLine(finding);
        foreach (var related in finding.Related)
        {
            print.Wrapped(Indent + 2, [new string(' ', Indent), new Piece(PlaceWords(related.Place), Ink.Place), ": ", related.Message]);
        }

        if (finding.Fixes is [var fix, ..])
        {
            print.Wrapped(Indent + 5, [new string(' ', Indent), new Piece("fix:", Ink.Good), " ", fix.Title]);
        }

        print.Line();
    }

    /// <summary>A path too long for the line's end keeps its line, so that it can be clicked, and the rest goes below.</summary>
    private void PrintHead(Finding finding)
    {
        var place = new Piece(PlaceWords(finding.Place), Ink.Place);
        var weight = new Piece(Words(finding.Severity), InkOf(finding.Severity));
        var name = $" {finding.Check.Code} {finding.Check.Slug}";
        if (Cells.Width(place.Text) + 2 + weight.Text.Length + name.Length <= print.Width)
        {
            print.Line(place, ": ", weight, name);
        }
        else
        {
            print.Line(place, ":");
            print.Line(new string(' ', Indent), weight, name);
        }
    }

    private void PrintLine(Finding finding)
    {
        var place = finding.Place;
        if (place.Line >= place.Declaration.Lines.Length || workspace.LineOf(place) is not { } line)
        {
            return;
        }

        var number = Cells.PadLeft((line + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), Indent + 4);
        var bar = new Piece(" | ", Ink.Faint);
        var excerpt = Excerpt.Of(place.Declaration.Lines[place.Line].Text, place.Span, print.Width - number.Length - bar.Text.Length);
        print.Line(new Piece(number, Ink.Faint), bar, excerpt.Text);
        print.Line(new string(' ', number.Length), bar, new string(' ', excerpt.Before), new Piece(new string('^', excerpt.Length), InkOf(finding.Severity)));
    }

    private string PlaceWords(Place place) => PlaceWords(workspace, shown, place);

    /// <summary><c>path:line:column</c>, counted from 1; columns in UTF-16 units, as most editors count.</summary>
    public static string PlaceWords(Workspace workspace, Func<FileId, string> shown, Place place) =>
        workspace.LineOf(place) is { } line ? $"{shown(place.File)}:{line + 1}:{place.Span.Start + 1}" : shown(place.File);

    public static string Words(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    private static Ink InkOf(Severity severity) => severity switch
    {
        Severity.Error => Ink.Error,
        Severity.Warning => Ink.Warning,
        _ => Ink.Note,
    };
}
