using System.Numerics;

namespace RigLang.Mechanics;

/// <summary>How a rig swings when it is left to itself at one speed.</summary>
/// <param name="Eigenvalues">Four, 1/s, the least damped first; empty if not computable.</param>
public sealed record LateralModes(IReadOnlyList<Complex> Eigenvalues)
{
    internal static LateralModes NotComputable { get; } = new([]);

    internal static LateralModes From(Complex[] eigenvalues)
    {
        if (eigenvalues.Any(value => !double.IsFinite(value.Real) || !double.IsFinite(value.Imaginary)))
            return NotComputable;
        return new LateralModes([.. eigenvalues.OrderBy(RatioOf).ThenByDescending(value => value.Imaginary)]);
    }

    /// <summary>
    /// Damping ratio of the least damped motion: 1 if nothing swings, 0 on the edge, below 0 if a swing grows by itself, −1 if the rig turns away without
    /// swinging. NaN if not computable.
    /// </summary>
    public double Damping => Eigenvalues.Count > 0 ? RatioOf(Eigenvalues[0]) : double.NaN;

    /// <summary>Damping ratio of the least damped swing alone; NaN if nothing swings.</summary>
    public double SwingDamping => Swing is { } swing ? RatioOf(swing) : double.NaN;

    /// <summary>Angular frequency of the least damped swing, rad/s; NaN if nothing swings.</summary>
    public double SwingFrequency => Swing is { } swing ? swing.Magnitude : double.NaN;

    private Complex? Swing
    {
        get
        {
            foreach (Complex value in Eigenvalues)
            {
                if (value.Imaginary != 0)
                    return value;
            }

            return null;
        }
    }

    private static double RatioOf(Complex value) => value == Complex.Zero ? 0 : -value.Real / value.Magnitude;
}
