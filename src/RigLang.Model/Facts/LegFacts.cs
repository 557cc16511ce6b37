using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>A leg of a trip.</summary>
public static class LegFacts
{
    public static BlockDeclaration Block { get; } = TripFacts.Block.Block(TripFacts.Leg);

    public static JourneyFacts Journey { get; } = new(Block);

    public static FactDeclaration SpeedLimit { get; } = Block.Fact(
        "speed-limit", Q.Speed, "80 km/h", "the law's or the signs'; the lower of this and `speed` counts", plausible: (3, 45), positive: true);

    public static FactDeclaration Delay { get; } = Block.Fact(
        "delay", Q.Time, "15 min", "road works, towns, a ferry", otherwise: "0", plausible: (0, 172_800));
}
