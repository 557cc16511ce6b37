using System.Collections.Immutable;
using System.Numerics;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Stability;

/// <summary>A way in which the rig moves sideways when it is left to itself.</summary>
/// <param name="Damping">Ratio; below zero it grows.</param>
/// <param name="Frequency">Swings a second, Hz; zero where it doesn't swing.</param>
/// <param name="Halving">Time in which it falls to half, s; negative is the time in which it doubles.</param>
public readonly record struct Motion(double Damping, double Frequency, double Halving);

/// <summary>All four eigenvalues of the single-track model as motions, and the damping of the least damped one against speed.</summary>
public static class Motions
{
    private static Computation<RigStudy, LateralModes?> AtOwnSpeed { get; } = new("motions left to themselves", (read, rig) =>
    {
        var speed = read.Quantity(rig.Rig, RigFacts.Speed);
        return read.Get(SwingModel.Frictionless, rig) is { } model
            ? SingleTrackModel.Modes(FrictionDamper.Apply(model, speed, read.Get(SwingModel.Friction, rig), SwingModel.Amplitude), speed)
            : null;
    });

    /// <summary>At the rig's speed, the least damped first, a pair of eigenvalues as one; empty where they can't be computed.</summary>
    public static ImmutableArray<Motion> Of(RigStudy rig) => rig.Compute(AtOwnSpeed, rig) is { Applies: true, Missing: null, Refusal: null, Value: { } modes }
        ? [.. modes.Eigenvalues.Where(value => value.Imaginary >= 0).Select(Of)]
        : [];

    /// <summary>Damping of a swing at each of these speeds (m/s), a friction head counted at one degree; empty where it can't be computed.</summary>
    public static ImmutableArray<(double Speed, Node<double> Damping)> Curve(RigStudy rig, IEnumerable<double> speeds)
    {
        if (!rig.HasTrailer || rig.Compute(SwingModel.Frictionless, rig) is not { Applies: true, Missing: null })
        {
            return [];
        }

        return [.. speeds.Select(speed => (Speed: speed, Damping: StabilityResults.Damping.Compute(rig.AtSpeed(speed))!)).Where(point => point.Damping.IsComputed)];
    }

    private static Motion Of(Complex value) => new(
        value == Complex.Zero ? 0 : -value.Real / value.Magnitude, value.Imaginary / (2 * Math.PI), value.Real == 0 ? double.PositiveInfinity : -Math.Log(2) / value.Real);
}
