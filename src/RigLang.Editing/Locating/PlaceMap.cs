using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;

namespace RigLang.Editing.Locating;

/// <summary>From places inside declarations to lines of files as they stand now. Nothing else on this floor adds up lines.</summary>
internal static class PlaceMap
{
    /// <summary>Null for a place in a file that an editor can't open, or in a declaration that is no longer there.</summary>
    public static FilePlace? Of(Workspace workspace, Place place)
    {
        if (workspace.LineOf(place) is not { } line)
        {
            return null;
        }

        var length = place.Declaration.Lines[place.Line].Text.Length;
        var start = Math.Clamp(place.Span.Start, 0, length);
        var end = Math.Clamp(place.Span.End, start, length);
        return new FilePlace(place.File, new LineRange(new LinePosition(line, start), new LinePosition(line, end)));
    }

    public static ImmutableArray<FilePlace> Of(Workspace workspace, IEnumerable<Place> places) =>
        [.. places.Select(place => Of(workspace, place)).OfType<FilePlace>().Distinct()];

    /// <summary>The range of a place in the file that the answer is about.</summary>
    public static LineRange? RangeOf(Workspace workspace, Place place) => Of(workspace, place)?.Range;

    /// <summary>"line 12" in the file that is looked at, "vans.rig:12" in another; lines counted from 1.</summary>
    public static string Words(Workspace workspace, Place place, FileId seenFrom)
    {
        var line = workspace.LineOf(place);
        return line is null ? place.File.Name : place.File == seenFrom ? $"line {line + 1}" : $"{place.File.Name}:{line + 1}";
    }
}
