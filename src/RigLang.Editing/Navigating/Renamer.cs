using System.Collections.Immutable;
using RigLang.Analysis.Studies;
using RigLang.Editing.Hovering;
using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;

namespace RigLang.Editing.Navigating;

/// <summary>
/// Gives a name another spelling wherever it stands for the same thing. Where one word stands for several things, as the tank of whichever trailer a load goes
/// with, they are renamed together, since the word can't be split. Refuses what would change the meaning of any line.
/// </summary>
internal static class Renamer
{
    private static readonly string[] ScaleWords = ["trailer", "tongue", "left", "right"];

    /// <summary>Null where there is no name.</summary>
    public static RenameTarget? At(Spot spot)
    {
        var here = Navigator.At(spot).Where(found => found.Symbol is not FileSymbol).ToList();
        if (here.Count == 0)
        {
            return null;
        }

        var place = here[0].Place;
        return new RenameTarget(PlaceMap.RangeOf(spot.State.Workspace, place)!.Value, place.Text, here.Select(found => Fixed(spot, found.Symbol)).FirstOrDefault(why => why is not null));
    }

    public static RenameAnswer Rename(Spot spot, string newName, CancellationToken cancel)
    {
        var name = Names.Compose(newName.Trim());
        if (!Names.IsName(name))
        {
            return RenameAnswer.Refused($"“{newName}” is no name: a name is lower-case letters and digits, joined by single hyphens, a letter first");
        }

        if (At(spot) is not { } target)
        {
            return RenameAnswer.Refused("No name stands here. Only names can be renamed");
        }

        if (target.Refusal is { } fixedName)
        {
            return RenameAnswer.Refused(fixedName);
        }

        var (symbols, places) = Everywhere(spot, cancel);
        return Clash(spot, symbols, places, name) is { } clash
            ? RenameAnswer.Refused(clash)
            : new RenameAnswer([.. PlaceMap.Of(spot.State.Workspace, places).Where(place => Differs(spot, place, name)).Select(place => (place, name))]);
    }

    /// <summary>All that the name at the spot stands for, and every place of these names: one name more can bring in another thing, until none is new.</summary>
    private static (HashSet<Symbol> Symbols, List<Place> Places) Everywhere(Spot spot, CancellationToken cancel)
    {
        var all = spot.State.AllFiles.Prepend(spot.File.Id).Distinct().Select(spot.State.Workspace.Link).OfType<LinkedFile>()
            .SelectMany(linked =>
            {
                cancel.ThrowIfCancellationRequested();
                return Occurrences.InFile(spot.State, linked);
            }).ToList();
        var byPlace = all.ToLookup(found => found.Place);
        var bySymbol = all.ToLookup(found => found.Symbol);
        var symbols = new HashSet<Symbol>();
        var open = new Stack<Symbol>(Navigator.At(spot).Select(found => found.Symbol).Where(symbol => symbol is not FileSymbol));
        while (open.TryPop(out var symbol))
        {
            if (symbols.Add(symbol))
            {
                foreach (var other in bySymbol[symbol].SelectMany(found => byPlace[found.Place]).Select(found => found.Symbol))
                {
                    open.Push(other);
                }
            }
        }

        return (symbols, [.. symbols.SelectMany(symbol => bySymbol[symbol]).Select(found => found.Place).Distinct()]);
    }

    /// <summary>Why the name can't be another one; null when it can.</summary>
    private static string? Fixed(Spot spot, Symbol symbol)
    {
        var owner = symbol is LocalSymbol local ? local.Owner : (DeclarationSymbol)symbol;
        if (owner.File == BuiltInPractices.File)
        {
            return $"`{owner.Name}` is built in. Declare a practice of your own to have one under another name";
        }

        if (symbol is LocalSymbol { Sort: LocalSort.Axle } axle && owner.Kind == DeclarationKind.Vehicle)
        {
            return $"A vehicle's axles are always called `front` and `rear`, so `{axle.Name}` can't have another name";
        }

        return null;
    }

    private static string? Clash(Spot spot, HashSet<Symbol> symbols, List<Place> places, string name)
    {
        foreach (var symbol in symbols)
        {
            var clash = symbol is LocalSymbol local ? ClashOfLocal(spot, local, places, name) : ClashOf(spot, (DeclarationSymbol)symbol, name);
            if (clash is not null)
            {
                return clash;
            }
        }

        return null;
    }

    /// <summary>A second one of the kind, wherever both would be in sight.</summary>
    private static string? ClashOf(Spot spot, DeclarationSymbol symbol, string name)
    {
        var workspace = spot.State.Workspace;
        if (symbol.Name == name)
        {
            return null;
        }

        if (BuiltInPractices.Find(symbol.Kind, name) is not null)
        {
            return $"`{name}` is the name of a built-in {symbol.Kind.Keyword()}";
        }

        foreach (var file in spot.State.AllFiles.Prepend(symbol.File).Distinct())
        {
            if ((file == symbol.File || workspace.Link(file)?.Used.Any(used => used.Id == symbol.File) == true) && workspace.Find(file, symbol.Kind, name) is { } taken)
            {
                return $"There is another {symbol.Kind.Keyword()} `{name}` ({PlaceMap.Words(workspace, taken.Own.NamePlace, spot.File.Id)})";
            }
        }

        return null;
    }

    private static string? ClashOfLocal(Spot spot, LocalSymbol symbol, List<Place> places, string name)
    {
        if (symbol.Name == name)
        {
            return null;
        }

        if (symbol.Sort == LocalSort.Axle && (PointCard.Meaning(name) is not null || ScaleWords.Contains(name)))
        {
            return $"`{name}` has a meaning of its own where axles are named";
        }

        foreach (var (file, syntax) in places.Select(place => (place.File, place.Declaration)).Distinct())
        {
            if (spot.State.Workspace.Link(file) is { } linked && linked.File.Declarations.FirstOrDefault(own => own.Syntax == syntax) is { } own && linked.Of(own) is { } declaration
                && LocalScope.Lines(spot.State, declaration, symbol.Sort).Where(pair => LocalScope.NameOf(pair.Line) == name).Select(pair => pair.Line).FirstOrDefault() is { } taken)
            {
                return $"`{name}` is already the name of another {Noun(symbol.Sort)} in {declaration} ({PlaceMap.Words(spot.State.Workspace, taken.Place, spot.File.Id)})";
            }
        }

        return null;
    }

    private static bool Differs(Spot spot, FilePlace place, string name) =>
        spot.State.Workspace.Find(place.File)?.Syntax.Lines[place.Range.Start.Line].Text[place.Range.Start.Character..place.Range.End.Character] != name;

    private static string Noun(LocalSort sort) => sort switch
    {
        LocalSort.Axle => "axle",
        LocalSort.Tank => "tank",
        LocalSort.Mount => "mount",
        LocalSort.Place => "place",
        _ => "item",
    };
}
