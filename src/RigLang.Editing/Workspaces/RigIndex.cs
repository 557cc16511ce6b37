using RigLang.Analysis.Studies;
using RigLang.Editing.Navigating;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Editing.Workspaces;

/// <summary>Every rig of the workspace with its parts, to go from a part to the rigs that name it. Made when first asked for, and then for good.</summary>
internal sealed class RigIndex(EditorState state)
{
    private readonly Lazy<ILookup<DeclarationSymbol, RigParts>> byPart = new(() => Build(state));

    /// <summary>The rigs that name the declaration as one of their parts, those of its own file first.</summary>
    public IEnumerable<RigParts> Naming(Declaration part) =>
        byPart.Value[DeclarationSymbol.Of(part)].OrderBy(rig => rig.Rig.Own.File != part.Own.File);

    private static ILookup<DeclarationSymbol, RigParts> Build(EditorState state)
    {
        var rigs = state.AllFiles.Select(state.Workspace.Link).OfType<LinkedFile>()
            .SelectMany(file => file.Declarations).Where(declaration => declaration.Kind == DeclarationKind.Rig)
            .Select(rig => RigParts.Of(state.Workspace, rig));
        return rigs.SelectMany(rig => PartsOf(rig).Select(part => (Part: DeclarationSymbol.Of(part), Rig: rig))).ToLookup(pair => pair.Part, pair => pair.Rig);
    }

    private static IEnumerable<Declaration> PartsOf(RigParts rig) =>
        new[] { rig.Vehicle, rig.Trailer, rig.Hitch, rig.Practice }.Concat(rig.Loads).OfType<Declaration>().Distinct();
}
