using RigLang.Model.Declaring;
using RigLang.Model.Estimates;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What is said of a hitch: ball mount, head and bars; or a device on a vehicle's own ball.</summary>
public static class HitchFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Hitch, "what is pushed into the receiver, or added to the vehicle's own ball");

    public static FactDeclaration Type { get; } = Block.Fact(
        "type", Signature.Choice("weight-carrying", "weight-distributing"), "weight-distributing", "whether spring bars put part of the tongue load on other axles",
        Need.ForVerdict);

    public static FactDeclaration TowingRating { get; } = Block.Fact(
        "towing-rating", Q.Mass, "12_000 lb", "the least of shank, head and ball, as used", Need.ForVerdict, plausible: (200, 20_000), positive: true);

    public static FactDeclaration TongueRating { get; } = Block.Fact(
        "tongue-rating", Q.Mass, "1200 lb", "most on the ball, vertically", Need.ForVerdict, plausible: (20, 2000), positive: true);

    public static FactDeclaration DValue { get; } = Block.Fact("d-value", Q.Force, "14 kN", "on its plate", plausible: (1000, 200_000), positive: true);

    public static FactDeclaration Ball { get; } = Block.Fact(
        "ball", Q.Size, "2-5/16 in", "ball diameter; 50 mm is not 2 in", Need.ForResults, plausible: (0.04, 0.08), positive: true, aliases: ["ball-size"]);

    public static FactDeclaration BallRating { get; } = Block.Fact(
        "ball-rating", Q.Mass, "14_000 lb", "trailer mass stamped on the ball", plausible: (300, 20_000), positive: true);

    public static FactDeclaration BallShank { get; } = Block.Fact(
        "ball-shank", Q.Size, "1-1/4 in", "diameter of the ball's thread, for its nut's torque", plausible: (0.015, 0.04), positive: true);

    public static FactDeclaration ShankSize { get; } = Block.Fact(
        "shank-size", Q.Size, "2.5 in", "the square bar that goes into the receiver", Need.ForResults, plausible: (0.02, 0.12), positive: true);

    public static FactDeclaration Reach { get; } = Block.Fact(
        "reach", Q.Length, "10.5 in", "pin hole to ball centre", Need.ForResults, plausible: (0.1, 1), positive: true);

    public static FactDeclaration Drop { get; } = Block.Fact(
        "drop", Q.Length, "4 in", "inside top of the tube down to the ball centre", Need.ForResults, plausible: (0, 0.5)).Stepped(0.025, 0.0254);

    public static FactDeclaration Rise { get; } = Block.Fact(
        "rise", Q.Length, "2 in", "inside top of the tube up to the ball centre", Need.ForResults, plausible: (0, 0.5)).Stepped(0.025, 0.0254);

    public static FactDeclaration Mass { get; } = Block.Fact(
        "mass", Q.Mass, "95 lb", "mount, head and bars, hanging at the ball", Need.ForResults, HitchEstimates.Mass, plausible: (1, 150));

    public static FactDeclaration Bars { get; } = Block.Fact(
        "bars", Q.Count, "2", "spring bars", Need.ForResults, Estimate.Default(2, "2"), plausible: (1, 2), positive: true, aliases: ["spring-bars"]);

    public static FactDeclaration BarRating { get; } = Block.Fact(
        "bar-rating", Q.Mass, "1200 lb", "tongue mass that the pair is made for", Need.ForResults, otherwise: "`tongue-rating`, said", plausible: (50, 2000), positive: true);

    public static FactDeclaration BarLength { get; } = Block.Fact(
        "bar-length", Q.Length, "30 in", "pivot to lift point", Need.ForResults, plausible: (0.3, 1.5), positive: true);

    public static FactDeclaration LinkPitch { get; } = Block.Fact("link-pitch", Q.Length, "1.2 in", "one step of the lift", plausible: (0.005, 0.1), positive: true);

    public static FactDeclaration YawFriction { get; } = Block.Fact(
        "yaw-friction", Signature.Of(new Slot(Signature.ValueRole, new QuantityOrNoneForm(Q.Torque))), "350 lbf·ft",
        "friction moment against swing, all devices; `none` says there is none", Need.ForResults, otherwise: "0, said", plausible: (10, 3000));

    public static FactDeclaration YawDamping { get; } = Block.Fact(
        "yaw-damping", Q.YawDamping, "900 N·m·s/rad", "viscous", Need.ForResults, otherwise: "0, said", plausible: (10, 50_000), positive: true);
}
