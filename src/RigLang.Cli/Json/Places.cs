using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Cli.Json;

/// <summary>A stretch of a line. Lines and columns count from 1, columns in UTF-16 units; the end column is the first behind it.</summary>
internal sealed record PlaceJson(string Path, int? Line, int Column, int EndColumn)
{
    public static PlaceJson Of(Workspace workspace, Func<FileId, string> shown, Place place) =>
        new(shown(place.File), workspace.LineOf(place) + 1, place.Span.Start + 1, place.Span.End + 1);
}
