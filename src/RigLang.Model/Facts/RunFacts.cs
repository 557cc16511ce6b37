using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What is said of one logged drive.</summary>
public static class RunFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Run, "one logged drive, to hold the model against");

    public static FactDeclaration Rig { get; } = Block.Fact("rig", Signature.Reference(DeclarationKind.Rig), "coast", "what was driven", Need.ForVerdict);

    public static FactDeclaration Date { get; } = Block.Fact("date", Signature.Moment(MomentShape.Date), "2026-09-12", "the day", Need.ForVerdict);

    public static FactDeclaration Load { get; } = Block.Fact(
        "load", Signature.Reference(DeclarationKind.Load), "autumn", "in place of the rig's loads", otherwise: "the rig's", key: [Signature.ValueRole]);

    public static JourneyFacts Journey { get; } = new(Block);

    public static FactDeclaration MovingTime { get; } = Block.Fact("moving-time", Q.Time, "45 min", "without stops", otherwise: "distance ÷ speed", plausible: (60, 172_800), positive: true);

    public static FactDeclaration Used { get; } = Block.Fact(
        "used", Signature.Quantity(Q.Energy, Q.Volume), "28.9 kWh ± 0.3 kWh", "out of the battery, or the tank", Need.ForResults, otherwise: "from the charges before and after", positive: true);

    public static FactDeclaration UsedWall { get; } = Block.Fact("used-wall", Q.Energy, "31.4 kWh", "what the post's meter said afterwards", positive: true);

    public static FactDeclaration ChargeBefore { get; } = Block.Fact("charge-before", Q.Ratio, "92 %", "on the display", plausible: (0, 1));

    public static FactDeclaration ChargeAfter { get; } = Block.Fact("charge-after", Q.Ratio, "60 %", "on the display", plausible: (0, 1));

    public static FactDeclaration Coast { get; } = Block.Fact(
        "coast",
        Signature.Of(new Slot("time", new QuantityForm([Q.Time])), new Slot("speed", new QuantityForm([Q.Speed]))),
        "10 s 30.2 m/s", "a point of a coast-down, in order", repeats: true);
}
