using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What is said of a visit to the scale.</summary>
public static class WeighingFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Weighing, "a visit to the scale; readings never change the rig, they are compared with it");

    public static FactDeclaration Rig { get; } = Block.Fact("rig", Signature.Reference(DeclarationKind.Rig), "coast", "what was weighed", Need.ForVerdict);

    public static FactDeclaration Date { get; } = Block.Fact("date", Signature.Moment(MomentShape.Date), "2026-09-05", "the day", Need.ForVerdict);

    public static FactDeclaration Place { get; } = Block.Fact("place", Signature.Text, "\"Public weighbridge, east gate\"", "where");

    public static FactDeclaration Ticket { get; } = Block.Fact("ticket", Signature.Text, "\"0417\"", "number of the slip");

    public static FactDeclaration ScaleStep { get; } = Block.Fact(
        "scale-step", Q.Mass, "10 kg", "one step of the scale: every reading is good to ± one step", otherwise: "from the digits written, marked", plausible: (0.1, 200), positive: true);

    public static FactDeclaration Load { get; } = Block.Fact(
        "load", Signature.Reference(DeclarationKind.Load), "autumn", "in place of the rig's loads, that day", otherwise: "the rig's", key: [Signature.ValueRole]);

    public static FactDeclaration Links { get; } = Block.Fact("links", Q.Count, "5", "as set that day", otherwise: "the rig's", plausible: (1, 15), positive: true);

    public static FactDeclaration HeadSpacers { get; } = Block.Fact("head-spacers", Q.Count, "6", "as set that day", otherwise: "the rig's", plausible: (0, 15));

    public static FactDeclaration Pass { get; } = Block.Fact(
        "pass",
        Signature.Of(
            new Slot("state", new ChoiceForm(["solo", "slack", "tight", "trailer", "coupled"])),
            new Slot("label", new TextForm(), IsOptional: true)),
        "tight", "one drive over the scale: `solo`, `slack` and `tight` bars, `trailer` alone, or `coupled` without such bars", Need.ForVerdict, key: ["state", "label"]);
}
