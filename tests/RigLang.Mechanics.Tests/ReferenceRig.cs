using RigLang.Mechanics;

namespace RigLang.Mechanics.Tests;

/// <summary>The rig that the computed regression values belong to: 3.00 m wheelbase, 1.20 m overhang, 2500 kg trailer with a 300 kg tongue.</summary>
internal static class ReferenceRig
{
    public const double Kg = Constants.Gravity;

    public static TowGeometry Vehicle { get; } = new(new AxleLoads(1250 * Kg, 1150 * Kg), 3.00, 1.20);

    public static TrailerLoad Trailer { get; } = new(2500, 300, 5.00);
}
