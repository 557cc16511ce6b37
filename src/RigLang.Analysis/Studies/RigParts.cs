using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Studies;

/// <summary>What a rig's lines name, looked up. Two that hold the same objects give the same results.</summary>
public sealed record RigParts(Declaration Rig, Declaration? Vehicle, Declaration? Trailer, Declaration? Hitch, ImmutableArray<Declaration> Loads, Declaration? Practice)
{
    /// <summary>Items and fills left out, for a pass in which somebody had stepped out: "item driver".</summary>
    public ImmutableHashSet<string> Absent { get; init; } = [];

    public static RigParts Of(Workspace workspace, Declaration rig)
    {
        Declaration? One(FactDeclaration fact, DeclarationKind kind) => rig.Block.Find(fact) is { } line ? Named(workspace, line, kind) : null;
        return new RigParts(
            rig,
            One(RigFacts.Vehicle, DeclarationKind.Vehicle),
            One(RigFacts.Trailer, DeclarationKind.Trailer),
            One(RigFacts.Hitch, DeclarationKind.Hitch),
            LoadsNamed(workspace, rig.Block, RigFacts.Load),
            rig.Block.Find(RigFacts.Practice) is null ? Wished(workspace, rig) : One(RigFacts.Practice, DeclarationKind.Practice));
    }

    private static Declaration? Wished(Workspace workspace, Declaration rig) => workspace.DefaultPractice is { } name
        ? workspace.Find(rig.Own.File, DeclarationKind.Practice, name) ?? BuiltInPractices.Find(DeclarationKind.Practice, name)
        : null;

    /// <summary>The loads that lines of a block name; those that aren't found are left out, and reported elsewhere.</summary>
    public static ImmutableArray<Declaration> LoadsNamed(Workspace workspace, Block block, FactDeclaration fact) =>
        [.. block.All(fact).Select(line => Named(workspace, line, DeclarationKind.Load)).OfType<Declaration>()];

    /// <summary>A name is looked up in the file where its line stands, so that a rig used from elsewhere brings its parts.</summary>
    public static Declaration? Named(Workspace workspace, Fact line, DeclarationKind kind) =>
        line.WordOf(Signature.ValueRole) is { } name ? workspace.Find(line.Place.File, kind, name) ?? BuiltInPractices.Find(kind, name) : null;

    public bool SameAs(RigParts other) =>
        ReferenceEquals(Rig, other.Rig) && ReferenceEquals(Vehicle, other.Vehicle) && ReferenceEquals(Trailer, other.Trailer) && ReferenceEquals(Hitch, other.Hitch)
        && ReferenceEquals(Practice, other.Practice) && Loads.AsSpan().SequenceEqual(other.Loads.AsSpan(), ReferenceEqualityComparer.Instance) && Absent.SetEquals(other.Absent);
}
