using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Model.Linking;

/// <summary>A declaration as it counts: its own lines over those it inherits. Kept while both are the same objects.</summary>
public sealed class Declaration
{
    private IReadOnlyList<(Block Block, Fact Line)>? allows;

    internal Declaration(OwnDeclaration own, Declaration? parent, Block block, ImmutableArray<Finding> findings)
    {
        Own = own;
        Parent = parent;
        Block = block;
        Findings = findings;
    }

    public OwnDeclaration Own { get; }

    /// <summary>The declaration that it is like.</summary>
    public Declaration? Parent { get; }

    public Block Block { get; }

    /// <summary>How many declarations stand behind it in its chain of <c>like</c>.</summary>
    internal int Depth => Parent is null ? 0 : Parent.Depth + 1;

    /// <summary>What showed when <c>like</c> was followed.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Its <c>allow</c> lines, those of its blocks included, each with the block that it stands in. Gathered once.</summary>
    public IReadOnlyList<(Block Block, Fact Line)> Allows =>
        allows ??= [.. Block.WithInner().SelectMany(block => block.All(EverywhereFacts.Allow).Select(line => (block, line)))];

    public DeclarationKind Kind => Own.Kind!.Value;

    public string Name => Own.Name;

    /// <summary>The title, its own or inherited; null when there is none.</summary>
    public string? Title => Own.Title;

    public override string ToString() => $"{Kind.Keyword()} {Name}";
}
