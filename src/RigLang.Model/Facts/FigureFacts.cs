using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>The few figures that belong to no rig; only a practice's <c>assume</c> can change them.</summary>
public static class FigureFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Figures();

    public static FactDeclaration Friction { get; } = Block.Fact(
        "friction", Q.Ratio, "0.65", "tyre on road", Need.Never, Estimate.Constant(0.85, "0.85 dry", "defaults of the EU's Joint Research Centre; 0.65 wet"), plausible: (0.05, 1.2));

    public static FactDeclaration ReactionTime { get; } = Block.Fact(
        "reaction-time", Q.Time, "2.5 s", "from seeing to braking", Need.Never, Estimate.Constant(2.5, "2.5 s", "Texas DOT Roadway Design Manual, after AASHTO"), plausible: (0.3, 5));

    public static FactDeclaration WindSpread { get; } = Block.Fact(
        "wind-spread", Q.Speed, "15 km/h", "half-width of an unknown wind", Need.Never, Estimate.Constant(15 / 3.6, "15 km/h", "our choice"), plausible: (0, 30));

    /// <summary>One cause for both axles: the same class of tyre, guessed wrong for both.</summary>
    public static FactDeclaration TyreStiffness { get; } = Block.Fact(
        "tyre-stiffness", Q.Ratio, "110 %", "cornering stiffness of the vehicle's tyres against what their class gives",
        Need.Never, Estimate.Constant(1, "100 %", "tyres of a class differ by some 25 % (value from memory)", 0.25), plausible: (0.3, 3));

    public static FactDeclaration TrailerTyreStiffness { get; } = Block.Fact(
        "trailer-tyre-stiffness", Q.Ratio, "110 %", "cornering stiffness of the trailer's tyres against what their class gives",
        Need.Never, Estimate.Constant(1, "100 %", "tyres of a class differ by some 25 % (value from memory)", 0.25), plausible: (0.3, 3));

    public static FactDeclaration Person { get; } = Block.Fact(
        "person", Q.Mass, "75 kg", "one person", Need.Never, Estimate.Constant(75, "75 kg", "EU masses and dimensions rules; 49 CFR 571.110 counts 68 kg"), plausible: (20, 200));

    public static FactDeclaration DynamicFactor { get; } = Block.Fact(
        "dynamic-factor", Q.Number, "2", "how much a bump multiplies the forces at the receiver's mounts", Need.Never, otherwise: "none: static forces are shown", plausible: (1, 5));

    public static FactDeclaration HillGrade { get; } = Block.Fact(
        "hill-grade", Q.Slope, "8 %", "the long hill that a rig's climbing results are about", Need.Never, Estimate.Default(0.06, "6 %"), plausible: (0, 0.3));

    public static FactDeclaration HillAltitude { get; } = Block.Fact(
        "hill-altitude", Q.Height, "2400 m", "how high the high hill lies", Need.Never, Estimate.Default(2000, "2000 m"), plausible: (0, 5500));
}
