using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Model.Files;

namespace RigLang.Editing.Navigating;

/// <summary>From a name to where it is made, and to everywhere it is used.</summary>
internal static class Navigator
{
    public static ImmutableArray<FilePlace> Definition(Spot spot) => PlaceSymbols(spot.State, At(spot).Select(found => found.Symbol).Distinct());

    public static ImmutableArray<FilePlace> References(Spot spot, bool withDeclaration, CancellationToken cancel)
    {
        var wanted = At(spot).Select(found => found.Symbol).ToHashSet();
        if (wanted.Count == 0)
        {
            return [];
        }

        var places = new List<Place>();
        foreach (var file in spot.State.AllFiles.Prepend(spot.File.Id).Distinct())
        {
            cancel.ThrowIfCancellationRequested();
            if (spot.State.Workspace.Link(file) is { } linked)
            {
                places.AddRange(Occurrences.InFile(spot.State, linked).Where(found => wanted.Contains(found.Symbol) && (withDeclaration || !found.IsDeclaration)).Select(found => found.Place));
            }
        }

        return PlaceMap.Of(spot.State.Workspace, places);
    }

    /// <summary>The names that the caret touches; a name may stand for several things, as the tank of whichever vehicle a load is put in.</summary>
    public static IEnumerable<Occurrence> At(Spot spot) => Occurrences.In(spot.State, spot.Own, spot.Linked)
        .Where(found => found.Place.Line == spot.Line && found.Place.Span.Touches(spot.Position.Character));

    private static ImmutableArray<FilePlace> PlaceSymbols(EditorState state, IEnumerable<Symbol> symbols)
    {
        var places = ImmutableArray.CreateBuilder<FilePlace>();
        foreach (var symbol in symbols)
        {
            if (symbol is FileSymbol { File: var file })
            {
                places.Add(new FilePlace(file, default));
            }
            else
            {
                places.AddRange(PlaceMap.Of(state.Workspace, PlacesOf(state, symbol)));
            }
        }

        return places.DrainToImmutable();
    }

    private static IEnumerable<Place> PlacesOf(EditorState state, Symbol symbol)
    {
        var owner = symbol is LocalSymbol local ? local.Owner : (DeclarationSymbol)symbol;
        if (state.Workspace.Link(owner.File)?.FindOwn(owner.Kind, owner.Name) is not { } declaration)
        {
            return [];
        }

        return symbol is LocalSymbol { Sort: var sort, Name: var name }
            ? LocalScope.LinesOf(declaration, sort).Where(line => LocalScope.NameOf(line) == name).Select(line => line.PlaceOf(line.Declaration.Signature.Slots[0].Role))
            : [declaration.Own.NamePlace];
    }
}
