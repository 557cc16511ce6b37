using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Stability;

/// <summary>How the rig keeps straight: the linear single-track model of vehicle and trailer.</summary>
public static class StabilityResults
{
    private const string Model = "eigenvalues of the linear single-track model of vehicle and trailer; good below 0.3 g, tyres linear, no roll: expect the real limit a few km/h lower";

    /// <summary>Nobody tows faster than this; beyond it the answer is "none up to".</summary>
    private const double Highest = 200 / 3.6;

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> Damping { get; } = Set.Add(
        "damping", QuantityKinds.Number, "Damping of a swing", "how fast a swing dies away at the rig's speed: 0.10 and more is good, 0.05 is poor, below 0 it grows by itself (common practice, value from memory)",
        "−Re λ ÷ |λ| of the least damped swing", Model,
        (read, rig) => read.Get(SwingModel.Frictionless, rig) is { } model
            ? SingleTrackModel.Modes(FrictionDamper.Apply(model, Speed(read, rig), read.Get(SwingModel.Friction, rig), SwingModel.Amplitude), Speed(read, rig)).Damping
            : double.NaN);

    public static ResultDeclaration<RigStudy> SwingSpeed { get; } = Set.Add(
        "swing-speed", QuantityKinds.Speed, "Swings by itself from", "the speed from which a swing grows by itself, friction of the head left out; not shown where there is none up to 200 km/h",
        "the speed where the damping of the least damped swing is zero", Model,
        (read, rig) => read.Get(SwingModel.Frictionless, rig) is { } model
            ? CriticalSpeed.Snaking(model, Highest).Places is [var first, ..] ? first : read.NotApplicable()
            : double.NaN);

    private static double Speed(Reader read, RigStudy rig) => read.Quantity(rig.Rig, RigFacts.Speed);
}
