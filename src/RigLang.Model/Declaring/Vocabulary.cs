using RigLang.Model.Facts;

namespace RigLang.Model.Declaring;

/// <summary>All declared blocks and facts, to look up by word. The one list of the kinds' blocks.</summary>
public static class Vocabulary
{
    private static readonly Dictionary<DeclarationKind, BlockDeclaration> RootsByKind = new()
    {
        [DeclarationKind.Vehicle] = VehicleFacts.Block,
        [DeclarationKind.Trailer] = TrailerFacts.Block,
        [DeclarationKind.Hitch] = HitchFacts.Block,
        [DeclarationKind.Load] = LoadFacts.Block,
        [DeclarationKind.Rig] = RigFacts.Block,
        [DeclarationKind.Trip] = TripFacts.Block,
        [DeclarationKind.Weighing] = WeighingFacts.Block,
        [DeclarationKind.Run] = RunFacts.Block,
        [DeclarationKind.Practice] = PracticeFacts.Block,
    };

    // Touching a block's class declares its keywords; the openers of these are declared by the blocks around them.
    private static readonly BlockDeclaration[] InnerBlocks =
    [
        AxleFacts.Vehicle.Block, CargoFacts.AboardVehicle.Block, ElectricFacts.Block, CombustionFacts.Block,
        AxleFacts.Trailer.Block, CargoFacts.AboardTrailer.Block,
        CargoFacts.Load.Block,
        LegFacts.Block, StopFacts.Block,
        PassFacts.Block,
    ];

    private static readonly ILookup<string, FactDeclaration> ByKeyword = Blocks.SelectMany(block => block.Facts).ToLookup(fact => fact.Keyword, StringComparer.Ordinal);

    private static readonly ILookup<string, FactDeclaration> ByAlias =
        Blocks.SelectMany(block => block.Facts).SelectMany(fact => fact.Aliases.Select(alias => (alias, fact))).ToLookup(pair => pair.alias, pair => pair.fact, StringComparer.Ordinal);

    /// <summary>Every block that a file can write: the declarations in the order of the manual, each with its inner blocks behind it.</summary>
    public static IEnumerable<BlockDeclaration> Blocks =>
        DeclarationKinds.All.SelectMany(kind => InnerBlocks.Where(block => block.Kind == kind).Prepend(RootsByKind[kind]));

    public static BlockDeclaration Root(DeclarationKind kind) => RootsByKind[kind];

    /// <summary>The fact of that keyword in the block, or the one that is at home everywhere.</summary>
    public static FactDeclaration? Find(BlockDeclaration block, string keyword) => block.Find(keyword) ?? EverywhereFacts.Block.Find(keyword);

    /// <summary>The fact of that keyword anywhere in declarations of the kind.</summary>
    public static FactDeclaration? FindInKind(DeclarationKind kind, string keyword) =>
        ByKeyword[keyword].FirstOrDefault(fact => fact.Home.Kind == kind);

    /// <summary>Facts with that keyword, in any block.</summary>
    public static IEnumerable<FactDeclaration> FindAnywhere(string keyword) => ByKeyword[keyword];

    /// <summary>Facts that go by that word elsewhere.</summary>
    public static IEnumerable<FactDeclaration> FindByAlias(string word) => ByAlias[word];

    /// <summary>The facts that a practice may <c>assume</c>: those that something stands in for, and the figures that are no rig's own.</summary>
    public static IEnumerable<FactDeclaration> Assumable =>
        FigureFacts.Block.Facts.Concat(Blocks.SelectMany(block => block.Facts)).Where(fact => fact.CanBeAssumed);
}
