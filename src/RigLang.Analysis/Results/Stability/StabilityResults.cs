using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Stability;

/// <summary>How the rig keeps straight: the linear single-track model of vehicle and trailer.</summary>
public static class StabilityResults
{
    internal const string Model = "eigenvalues of the linear single-track model of vehicle and trailer; good below 0.3 g, tyres linear, no roll: expect the real limit a few km/h lower";

    private const string Steady = "steady turning of the linear single-track model: the trailer puts the tongue's share of side force on the ball, the same as vertically";

    /// <summary>Nobody tows faster than this; beyond it the answer is "none up to".</summary>
    private const double Highest = 200 / 3.6;

    private const string None = "none up to 200 km/h (124 mph)";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> Damping { get; } = Set.Add(
        "damping", QuantityKinds.Number, "Damping of a swing", "how fast a swing dies away at the rig's speed: 0.10 and more is good, 0.05 is poor, below 0 it grows by itself (common practice, value from memory). A friction head is counted at one degree of swing: it damps smaller swings more, larger ones less",
        "−Re λ ÷ |λ| of the least damped swing", Model,
        (read, rig) => SwingModel.Damping(read, rig, Speed(read, rig)));

    public static ResultDeclaration<RigStudy> DampingSpread { get; } = Set.Add(
        "damping-spread", QuantityKinds.Number, "Damping is good to ±", "half-width of the damping, 19 times out of 20, by what is estimated of yaw inertia and tyres or written with ±; not shown where nothing of it is in doubt",
        "√ of the sum of squares of what each doubt moves", "first order; spreads of the estimates as their facts say, ± 25 % for tyres from their class (values from memory)",
        (read, rig) => SwingModel.DampingSpread(read, rig, Speed(read, rig)) is var spread && spread == 0 ? read.NotApplicable() : spread);

    public static ResultDeclaration<RigStudy> LargeSwingDamping { get; } = Set.Add(
        "large-swing-damping", QuantityKinds.Number, "Damping of a large swing", "what is left of the damping when a swing is so wide that the friction at the ball counts for nothing against it; not shown without such friction",
        "damping, yaw-friction left out", Model,
        (read, rig) => rig.HasTrailer && read.Get(SwingModel.Friction, rig) == 0 ? read.NotApplicable() : SwingModel.DampingOfLargeSwing(read, rig, Speed(read, rig)));

    public static ResultDeclaration<RigStudy> SwingSpeed { get; } = Set.Add(
        "swing-speed", QuantityKinds.Speed, "Swings by itself from", "the speed from which a swing grows by itself, friction of the head left out",
        "the speed where the damping of the least damped swing is zero", Model,
        (read, rig) => read.Get(SwingModel.Frictionless, rig) is { } model
            ? CriticalSpeed.Snaking(model, Highest).Places is [var first, ..] ? first : read.Refuse(None)
            : double.NaN,
        noneIsAnswer: true);

    public static ResultDeclaration<RigStudy> Understeering { get; } = Set.Add(
        "understeer", QuantityKinds.Understeer, "Understeer", "how much more steer a curve asks for with each g of sideways acceleration, as driven; below zero it asks for less and the vehicle can turn away. A small difference of two large figures: with estimated tyres it says which way a change moves it, and little more",
        "front share of mass and tongue ÷ front cornering-stiffness − rear share ÷ rear cornering-stiffness", Steady,
        (read, rig) => SwingModel.Understeering(read, rig));

    public static ResultDeclaration<RigStudy> DivergenceSpeed { get; } = Set.Add(
        "divergence-speed", QuantityKinds.Speed, "Turns away by itself from", "the speed from which the vehicle goes into a spin without swinging first; it depends on the vehicle and the tongue alone",
        "√(wheelbase ÷ −understeer), for an understeer below zero", Steady,
        (read, rig) => CriticalSpeed.Divergence(read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase), read.Get(Understeering, rig)) is var speed && (speed <= Highest || read.HasMissing)
            ? speed
            : read.Refuse(None),
        noneIsAnswer: true);

    private static double Speed(Reader read, RigStudy rig) => read.Quantity(rig.Rig, RigFacts.Speed);
}
