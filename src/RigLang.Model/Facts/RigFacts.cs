using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What is said of a rig: which parts, how loaded, how set up.</summary>
public static class RigFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Rig, "a vehicle with its trailer, hitch and loads");

    public static FactDeclaration Vehicle { get; } = Block.Fact("vehicle", Signature.Reference(DeclarationKind.Vehicle), "van", "which vehicle", Need.ForVerdict);

    public static FactDeclaration Trailer { get; } = Block.Fact(
        "trailer", Signature.Reference(DeclarationKind.Trailer), "wren", "which trailer; none of it is a solo rig", otherwise: "solo");

    public static FactDeclaration Hitch { get; } = Block.Fact(
        "hitch", Signature.Reference(DeclarationKind.Hitch), "springs", "which hitch", otherwise: "the vehicle's own ball");

    public static FactDeclaration Load { get; } = Block.Fact(
        "load", Signature.Reference(DeclarationKind.Load), "autumn", "a load aboard; may be several", otherwise: "as under aboard, said", key: [Signature.ValueRole]);

    public static FactDeclaration Practice { get; } = Block.Fact(
        "practice", Signature.Reference(DeclarationKind.Practice), "ours", "whose limits and assumptions apply; `common-na` and `common-eu` are built in");

    public static FactDeclaration Rules { get; } = Block.Fact(
        "rules", Signature.Choice("de", "eu", "us", "none"), "de", "whose dated legal facts are checked", otherwise: "no legal checks");

    public static FactDeclaration Licence { get; } = Block.Fact(
        "licence", Signature.Choice("b", "b96", "be"), "b", "the driver's, for `rules`", aliases: ["license"]);

    public static FactDeclaration Speed { get; } = Block.Fact(
        "speed", Q.Speed, "85 km/h", "for results at one speed", Need.ForResults, plausible: (3, 45), positive: true)
        .Stepped(5 / 3.6, 5 * 0.44704);

    public static FactDeclaration Restoration { get; } = Block.Fact(
        "restoration", Q.Ratio, "50 %", "wanted share of the front axle's lost load that the bars bring back", Need.ForResults, plausible: (0, 1.5),
        aliases: ["falr", "front-axle-restoration"]).Stepped(0.1, 0.1);

    public static FactDeclaration Couple { get; } = Block.Fact(
        "couple", Q.Torque, "756 N·m", "or the moment of the bars", plausible: (0, 10_000));

    public static FactDeclaration BarForce { get; } = Block.Fact(
        "bar-force", Q.Force, "1.0 kN", "or the lift force of one bar", plausible: (0, 20_000));

    public static FactDeclaration Links { get; } = Block.Fact(
        "links", Q.Count, "5", "record: links under tension between bar and bracket, counted", plausible: (1, 15), positive: true);

    public static FactDeclaration HeadSpacers { get; } = Block.Fact(
        "head-spacers", Q.Count, "6", "record: spacers that tilt the hitch head", plausible: (0, 15), aliases: ["washers"]);

    public static FactDeclaration DragArea { get; } = Block.Fact(
        "drag-area", Q.Area, "2.55 m² ± 8 %", "whole combination, from runs", otherwise: "vehicle and trailer together, marked", plausible: (0.4, 8), positive: true);

    public static FactDeclaration Rolling { get; } = Block.Fact(
        "rolling", Q.Ratio, "0.0105", "whole combination, from runs", otherwise: "from the parts", plausible: (0.003, 0.05), positive: true);

    public static FactDeclaration Surface { get; } = Block.Fact(
        "surface", Signature.Choice("asphalt", "gravel", "grass"), "asphalt", "the road", otherwise: "asphalt");
}
