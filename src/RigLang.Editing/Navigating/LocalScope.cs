using RigLang.Analysis.Studies;
using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;

namespace RigLang.Editing.Navigating;

/// <summary>
/// Which names made by lines are in sight of another line: a vehicle's axles in itself and wherever a rig brings it, the items of a load in the weighing of
/// its rig. A load goes with any rig, so its tanks and axles are those of every rig that names it.
/// </summary>
internal static class LocalScope
{
    /// <summary>The lines that make names of the sort, as seen from a declaration.</summary>
    public static IEnumerable<(Declaration Owner, Fact Line)> Lines(EditorState state, Declaration from, LocalSort sort) =>
        Owners(state, from).SelectMany(owner => LinesOf(owner, sort).Select(line => (owner, line))).DistinctBy(pair => pair.line);

    /// <summary>What the name stands for, as seen from a declaration; nothing when no line makes it.</summary>
    public static IEnumerable<LocalSymbol> Find(EditorState state, Declaration from, LocalSort sort, string name) =>
        Lines(state, from, sort).Where(pair => NameOf(pair.Line) == name).Select(pair => SymbolOf(pair.Owner, sort, name)).Distinct();

    /// <summary>What the line's own name stands for; null for a line that makes none.</summary>
    public static LocalSymbol? MadeBy(Declaration owner, Fact line) =>
        SortOf(line.Declaration) is { } sort && NameOf(line) is { Length: > 0 } name ? SymbolOf(owner, sort, name) : null;

    /// <summary>The lines of the declaration that make such names.</summary>
    public static IEnumerable<Fact> LinesOf(Declaration declaration, LocalSort sort) =>
        declaration.Block.WithInner().SelectMany(block => block.Facts).Where(line => SortOf(line.Declaration) == sort && NameOf(line) is { Length: > 0 });

    public static string? NameOf(Fact line) => line.Declaration.Signature.Slots is [{ Role: var role }, ..] ? line.WordOf(role) : null;

    public static LocalSort? SortOf(FactDeclaration fact) =>
        fact == VehicleFacts.Axle || fact == TrailerFacts.Axle ? LocalSort.Axle
        : fact == VehicleFacts.Tank || fact == TrailerFacts.Tank ? LocalSort.Tank
        : fact == VehicleFacts.Mount ? LocalSort.Mount
        : fact == TripFacts.Leg || fact == TripFacts.Start ? LocalSort.Place
        : fact.Keyword == "item" ? LocalSort.Item
        : null;

    private static IEnumerable<Declaration> Owners(EditorState state, Declaration from)
    {
        IEnumerable<RigParts> rigs = from.Kind switch
        {
            DeclarationKind.Load => state.Rigs.Naming(from),
            DeclarationKind.Rig => [RigParts.Of(state.Workspace, from)],
            DeclarationKind.Weighing => RigOf(state, from, WeighingFacts.Rig, WeighingFacts.Load),
            DeclarationKind.Trip => RigOf(state, from, TripFacts.Rig, null),
            DeclarationKind.Run => RigOf(state, from, RunFacts.Rig, RunFacts.Load),
            _ => [],
        };
        return rigs.SelectMany(rig => new[] { rig.Vehicle, rig.Trailer }.Concat(rig.Loads)).OfType<Declaration>().Prepend(from).Distinct();
    }

    private static IEnumerable<RigParts> RigOf(EditorState state, Declaration from, FactDeclaration rigFact, FactDeclaration? loadFact)
    {
        if (from.Block.Find(rigFact) is not { } line || RigParts.Named(state.Workspace, line, DeclarationKind.Rig) is not { } rig)
        {
            return [];
        }

        var parts = RigParts.Of(state.Workspace, rig);
        var loads = loadFact is null ? [] : RigParts.LoadsNamed(state.Workspace, from.Block, loadFact);
        return [loads.IsEmpty ? parts : parts with { Loads = loads }];
    }

    private static LocalSymbol SymbolOf(Declaration owner, LocalSort sort, string name)
    {
        while (owner.Parent is { } parent && LinesOf(parent, sort).Any(line => NameOf(line) == name))
        {
            owner = parent;
        }

        return new LocalSymbol(DeclarationSymbol.Of(owner), sort, name);
    }
}
