using System.Collections.Immutable;
using System.Text;
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

    /// <summary>From a name to what it is made after: the declaration that its own is <c>like</c>, else that declaration; for a name made by a line, the declaration it belongs to.</summary>
    public static ImmutableArray<FilePlace> TypeDefinition(Spot spot) =>
        PlaceSymbols(spot.State, At(spot).Select(found => BehindOf(spot.State, found.Symbol)).OfType<DeclarationSymbol>().Distinct());

    /// <summary>The same names in this file.</summary>
    public static ImmutableArray<NameHighlight> Highlights(Spot spot, CancellationToken cancel)
    {
        var wanted = At(spot).Select(found => found.Symbol).ToHashSet();
        if (wanted.Count == 0 || spot.State.Workspace.Link(spot.File.Id) is not { } linked)
        {
            return [];
        }

        var found = new List<(Place Place, bool IsMade)>();
        var word = At(spot).First().Place.Text;
        foreach (var own in linked.File.Declarations.Where(own => Mentions(own, word)))
        {
            cancel.ThrowIfCancellationRequested();
            found.AddRange(Occurrences.In(spot.State, own, linked.Of(own)).Where(one => wanted.Contains(one.Symbol)).Select(one => (one.Place, one.IsDeclaration)));
        }

        return [.. found.Select(one => PlaceMap.RangeOf(spot.State.Workspace, one.Place) is { } range ? new NameHighlight(range, one.IsMade) : (NameHighlight?)null)
            .OfType<NameHighlight>().DistinctBy(one => one.Range)];
    }

    /// <summary>
    /// The places of a name that are changed together while it is typed over: a trip's place and its stops, when nothing outside this file means them. Other
    /// names are renamed, which looks at all files.
    /// </summary>
    public static ImmutableArray<LineRange> Linked(Spot spot, CancellationToken cancel)
    {
        if (!At(spot).Any(found => found.Symbol is LocalSymbol { Sort: LocalSort.Place }))
        {
            return [];
        }

        var places = References(spot, withDeclaration: true, cancel);
        return places.Length > 1 && places.All(place => place.File == spot.File.Id) ? [.. places.Select(place => place.Range)] : [];
    }

    /// <summary>The names that the caret touches; a name may stand for several things, as the tank of whichever vehicle a load is put in.</summary>
    public static IEnumerable<Occurrence> At(Spot spot) => Occurrences.In(spot.State, spot.Own, spot.Linked)
        .Where(found => found.Place.Line == spot.Line && found.Place.Span.Touches(spot.Position.Character));

    /// <summary>Asked at each move of the caret, so what doesn't hold the word at all isn't looked through. A path or an accented letter has several spellings.</summary>
    private static bool Mentions(OwnDeclaration own, string word) =>
        !Ascii.IsValid(word) || word.Contains('"', StringComparison.Ordinal) || own.Syntax.Lines.Any(line => line.Text.Contains(word, StringComparison.Ordinal));

    private static DeclarationSymbol? BehindOf(EditorState state, Symbol symbol) => symbol switch
    {
        LocalSymbol local => local.Owner,
        DeclarationSymbol declared when state.Workspace.Link(declared.File)?.FindOwn(declared.Kind, declared.Name) is { } found =>
            found.Parent is { } parent ? DeclarationSymbol.Of(parent) : declared,
        _ => null,
    };

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
