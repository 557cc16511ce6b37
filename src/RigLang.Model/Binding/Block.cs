using System.Collections.Immutable;
using RigLang.Model.Declaring;

namespace RigLang.Model.Binding;

/// <summary>A declaration or a block with its facts, after <c>like</c> has been followed. Immutable.</summary>
public sealed class Block
{
    private readonly Dictionary<FactDeclaration, ImmutableArray<Fact>> facts = [];
    private readonly Dictionary<BlockDeclaration, ImmutableArray<Block>> blocks = [];

    public Block(BlockDeclaration declaration, string path, Fact? opener, ImmutableArray<Fact> facts, ImmutableArray<Block> blocks)
    {
        Declaration = declaration;
        Path = path;
        Opener = opener;
        Facts = facts;
        Blocks = blocks;
        foreach (var group in facts.GroupBy(fact => fact.Declaration))
        {
            this.facts.Add(group.Key, [.. group]);
        }

        foreach (var group in blocks.GroupBy(block => block.Declaration))
        {
            this.blocks.Add(group.Key, [.. group]);
        }

        foreach (var block in blocks)
        {
            block.Outer = this;
        }
    }

    public BlockDeclaration Declaration { get; }

    /// <summary>Names the block among all of a workspace: file, kind, name, then keyword and key of each block on the way.</summary>
    public string Path { get; }

    /// <summary>The line that opens it; null for a whole declaration.</summary>
    public Fact? Opener { get; }

    /// <summary>The block's key: an axle's name, a leg's place.</summary>
    public string Key => Opener?.Key ?? "";

    /// <summary>The block around it; null for a whole declaration.</summary>
    public Block? Outer { get; private set; }

    /// <summary>In file order, those inherited first. Lines that open blocks are among them.</summary>
    public ImmutableArray<Fact> Facts { get; }

    public ImmutableArray<Block> Blocks { get; }

    /// <summary>The only line of that fact, or null. Where a keyword stands twice the first counts, and the second is reported.</summary>
    public Fact? Find(FactDeclaration fact) => facts.TryGetValue(fact, out var found) ? found[0] : null;

    public ImmutableArray<Fact> All(FactDeclaration fact) => facts.TryGetValue(fact, out var found) ? found : [];

    public Block? FindBlock(BlockDeclaration declaration) => blocks.TryGetValue(declaration, out var found) ? found[0] : null;

    public Block? FindBlock(BlockDeclaration declaration, string key) =>
        blocks.TryGetValue(declaration, out var found) ? found.FirstOrDefault(block => block.Key == key) : null;

    public ImmutableArray<Block> AllBlocks(BlockDeclaration declaration) => blocks.TryGetValue(declaration, out var found) ? found : [];

    /// <summary>This block and every block in it.</summary>
    public IEnumerable<Block> WithInner() => Blocks.SelectMany(block => block.WithInner()).Prepend(this);
}
