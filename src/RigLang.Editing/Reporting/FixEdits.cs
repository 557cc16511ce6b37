using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Reporting;

/// <summary>A fix in terms of the files as they stand now.</summary>
internal static class FixEdits
{
    /// <summary>Null when one of its places is no longer there: half a fix is none.</summary>
    public static EditorFix? Of(Workspace workspace, Fix fix, bool isPreferred)
    {
        var edits = ImmutableArray.CreateBuilder<(FilePlace Place, string NewText)>(fix.Edits.Length);
        foreach (var edit in fix.Edits)
        {
            if (PlaceMap.Of(workspace, edit.Place) is not { } place)
            {
                return null;
            }

            var file = workspace.Find(edit.Place.File)!.Syntax;
            edits.Add((edit.NewText.Length == 0 ? WithoutEmptyLine(place, file) : place, edit.NewText.ReplaceLineEndings(BreakOf(file))));
        }

        return new EditorFix(fix.Title, edits.DrainToImmutable(), isPreferred);
    }

    /// <summary>The line break that the file uses.</summary>
    public static string BreakOf(FileSyntax file) => file.Lines[0].Break switch
    {
        LineBreak.CarriageReturnLineFeed => "\r\n",
        LineBreak.CarriageReturn => "\r",
        _ => "\n",
    };

    /// <summary>What takes everything out of a line takes the line out too.</summary>
    private static FilePlace WithoutEmptyLine(FilePlace place, FileSyntax file)
    {
        var (start, end) = (place.Range.Start, place.Range.End);
        var isWhole = string.IsNullOrWhiteSpace(file.Lines[start.Line].Text[..start.Character]) && string.IsNullOrWhiteSpace(file.Lines[end.Line].Text[end.Character..]);
        return !isWhole || end.Line + 1 >= file.Lines.Length ? place : new FilePlace(place.File, new LineRange(new LinePosition(start.Line, 0), new LinePosition(end.Line + 1, 0)));
    }
}
