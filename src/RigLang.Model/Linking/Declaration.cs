using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Model.Linking;

/// <summary>A declaration as it counts: its own lines over those it inherits. Kept while both are the same objects.</summary>
public sealed class Declaration
{
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

    public DeclarationKind Kind => Own.Kind!.Value;

    public string Name => Own.Name;

    /// <summary>The title, its own or inherited; null when there is none.</summary>
    public string? Title => Own.Title;

    public override string ToString() => $"{Kind.Keyword()} {Name}";
}
