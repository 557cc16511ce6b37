using System.Collections.Immutable;
using RigLang.Model.Declaring;

namespace RigLang.Model.Binding;

/// <summary>The lines that a declaration or block has of its own, before <c>like</c> is followed.</summary>
internal sealed record OwnBlock(BlockDeclaration Declaration, Fact? Opener, ImmutableArray<Fact> Facts, ImmutableArray<OwnBlock> Blocks)
{
    public string Key => Opener?.Key ?? "";
}
