using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>One drive over the scale.</summary>
public static class PassFacts
{
    public static BlockDeclaration Block { get; } = WeighingFacts.Block.Block(WeighingFacts.Pass);

    public static FactDeclaration Scale { get; } = Block.Fact(
        "scale",
        Signature.Of(
            new Slot("axles", new ScaledAxlesForm()),
            new Slot("mass", new QuantityForm([Q.Mass]))),
        "front 1195 kg", "one platform, one reading: an axle, several, a wheel (`front left`), `trailer` for all its axles, or `tongue`", Need.ForVerdict, key: ["axles"]);

    public static FactDeclaration Arch { get; } = Block.Fact(
        "arch",
        Signature.Of(
            new Slot("axle", new LocalNameForm(LocalNames.Axle)),
            new Slot("height", new QuantityForm([Q.Length]))),
        "front 39-1/4 in", "road to wheel arch", key: ["axle"]);

    public static FactDeclaration CouplingHeight { get; } = Block.Fact("coupling-height", Q.Length, "0.42 m", "road to ball centre", plausible: (0.1, 1.2), positive: true);

    public static FactDeclaration Head { get; } = Block.Fact("head", Signature.Choice("on", "off"), "off", "whether the hitch head was fitted", otherwise: "on, said");

    public static FactDeclaration Absent { get; } = Block.Fact(
        "absent",
        Signature.Of(
            new Slot("what", new ChoiceForm(["item", "fill"])),
            new Slot("name", new LocalNameForm(LocalNames.ItemOrTank))),
        "item driver", "not there in this pass", key: ["what", "name"]);
}
