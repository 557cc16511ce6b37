using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// A mass at a point: a person, a bag, a tank, or the whole vehicle at its centre.
/// </summary>
/// <param name="Mass">kg. Negative takes away what was weighed with the rest.</param>
/// <param name="Position">m rearward from the reference: the front axle of a vehicle, the coupling of a trailer.</param>
/// <param name="Height">m above the road; NaN when not known.</param>
/// <param name="Left">m left of the middle.</param>
public readonly record struct PointMass(double Mass, double Position, double Height = double.NaN, double Left = 0)
{
    /// <summary>The total of several masses, at their common centre. A height is known only if every mass has one.</summary>
    public static PointMass Sum(ReadOnlySpan<PointMass> items)
    {
        double mass = 0, position = 0, height = 0, left = 0;
        foreach (PointMass item in items)
        {
            mass += item.Mass;
            position += item.Mass * item.Position;
            height += item.Mass * item.Height;
            left += item.Mass * item.Left;
        }

        return new PointMass(Finite(mass), Finite(position / mass), Finite(height / mass), Finite(left / mass));
    }
}
