using RigLang.Editing.Locating;
using RigLang.Editing.Navigating;
using RigLang.Model.Declaring;

namespace RigLang.Editing.Hovering;

/// <summary>A file that a <c>use</c> line names: what it shows this one.</summary>
internal static class FileCard
{
    public static CardText? Of(Spot spot)
    {
        if (Occurrences.In(spot.State, spot.Own, null).Select(found => found.Symbol).OfType<FileSymbol>().FirstOrDefault() is not { File: var file }
            || spot.State.Workspace.Find(file) is not { } used)
        {
            return null;
        }

        var names = used.Declarations.Where(own => own.Kind is not null && own.Name.Length > 0)
            .Select(own => own.Title is { } title ? $"{own.Kind!.Value.Keyword()} {own.Name} “{title}”" : $"{own.Kind!.Value.Keyword()} {own.Name}").ToList();
        return new CardText().Heading(file.Name).Paragraph(names.Count == 0 ? "Declares nothing" : "Shows this file").Bullets(names, most: 12);
    }
}
