namespace RigLang.Mechanics.Tests;

/// <summary>Rigs whose eigenvalues were computed by two formulations.</summary>
internal static class LateralRigs
{
    /// <summary>Turns away before it swings.</summary>
    public static LateralRig Oversteering { get; } = new()
    {
        VehicleMass = 2200, VehicleInertia = 4200, ToFront = 1.40, ToRear = 1.50, ToBall = 2.70, TrailerMass = 1800, TrailerInertia = 4500,
        TrailerMassCentre = 4.50, TrailerAxle = 4.90, FrontStiffness = 140_000, RearStiffness = 150_000, TrailerStiffness = 140_000,
    };

    /// <summary>Swings first.</summary>
    public static LateralRig Snaking { get; } = new()
    {
        VehicleMass = 1600, VehicleInertia = 2600, ToFront = 1.20, ToRear = 1.50, ToBall = 2.55, TrailerMass = 1400, TrailerInertia = 3600,
        TrailerMassCentre = 3.85, TrailerAxle = 4.00, FrontStiffness = 110_000, RearStiffness = 150_000, TrailerStiffness = 90_000,
    };

    /// <summary>A rig between sensible bounds from whole numbers.</summary>
    public static LateralRig Any(int a, int b, int c, int d)
    {
        double toFront = Numbers.Between(a, 1.1, 1.5), toRear = Numbers.Between(b, 1.2, 1.7), mass = Numbers.Between(c, 1300, 2600), trailer = Numbers.Between(d, 500, 2400);
        double axle = Numbers.Between(a ^ d, 3, 6), load = mass * Constants.Gravity / (toFront + toRear);
        return new LateralRig
        {
            VehicleMass = mass, VehicleInertia = mass * toFront * toRear, ToFront = toFront, ToRear = toRear, ToBall = toRear + Numbers.Between(b ^ c, 0.8, 1.4),
            TrailerMass = trailer, TrailerInertia = trailer / 12 * (36 + 5.3), TrailerMassCentre = axle * (1 - Numbers.Between(c ^ d, 0.02, 0.12)), TrailerAxle = axle,
            FrontStiffness = 11 * load * toRear, RearStiffness = 13 * load * toFront, TrailerStiffness = 8 * trailer * Constants.Gravity,
        };
    }
}
