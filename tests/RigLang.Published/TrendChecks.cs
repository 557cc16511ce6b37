using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

/// <summary>Statements of the literature about stability that have no number: held in sign on one rig that swings.</summary>
internal static class TrendChecks
{
    private const string Caravans = "IMechE paper C132/83, abstract", Dominant = "Darling, Tilley and Gao, Proc. IMechE D 223 (2009) 471-484, abstract";
    private const string Divergent = "Hac, Fulk and Chen, SAE 2008-01-1228, introduction", Influences = "ASME J. Dyn. Sys. 96(2) 236 (1974), abstract";
    private const string Typical = "Zhang et al., Procedia IUTAM 22 (2017) 251-258, abstract";

    private static LateralRig Rig { get; } = new()
    {
        VehicleMass = 1600, VehicleInertia = 2600, ToFront = 1.20, ToRear = 1.50, ToBall = 2.55, TrailerMass = 1400, TrailerInertia = 3600,
        TrailerMassCentre = 3.85, TrailerAxle = 4.00, FrontStiffness = 110_000, RearStiffness = 150_000, TrailerStiffness = 90_000,
    };

    private static LateralRig Diverging { get; } = Rig with { RearStiffness = 80_000 };

    private static LateralRig MoreTongue { get; } = Rig with { TrailerMassCentre = 4.00 * (1 - (0.0375 * 2)) };

    private static double ByMass => Moved(Rig with { TrailerMass = 1400 * 1.2 });

    public static IEnumerable<PublishedCheck> All =>
    [
        Steadier(Caravans, "a trailer of less yaw inertia", Rig with { TrailerInertia = 3000 }),
        Steadier(Caravans, "a longer drawbar at the same tongue share", Rig with { TrailerMassCentre = 4.235, TrailerAxle = 4.40 }),
        Steadier(Caravans, "a shorter hitch overhang", Rig with { ToBall = 2.35 }),
        Steadier(Caravans, "a longer wheelbase with the same overhang", Rig with { ToFront = 1.33, ToRear = 1.67, ToBall = 2.72 }),
        Steadier(Caravans, "stiffer trailer tyres", Rig with { TrailerStiffness = 100_000 }),
        Steadier(Caravans, "a damper at the hitch", Rig with { HitchDamping = 500 }),
        Steadier(Dominant, "more nose mass", MoreTongue),
        Sign("swing of the rig", Influences, "hitch load, trailer length, mass and inertia each changed by a tenth or more", "least change of the critical speed above 0.1 m/s, sign", 1,
            () => Math.Min(Math.Min(ByMass, Moved(MoreTongue)), Math.Min(Moved(Rig with { TrailerMassCentre = 4.235, TrailerAxle = 4.40 }), Moved(Rig with { TrailerInertia = 4000 }))) - 0.1),
        Sign("swing of the rig", Dominant, "a fifth more yaw inertia against a fifth more mass", "change of the critical speed less twice the one by mass alone, sign", 1,
            () => Moved(Rig with { TrailerInertia = 3600 * 1.2 }) - (2 * ByMass)),
        Sign("swing of the rig", Dominant, "twice the nose mass against a fifth more mass", "change of the critical speed less twice the one by mass alone, sign", 1, () => Moved(MoreTongue) - (2 * ByMass)),
        new("swing of the rig", Typical, Read, "car and trailer, our example rig; 'about 100 km/h' is a band", "critical speed, km/h", 100, 19, () => Critical(Rig) * 3.6),
        new("divergence", Divergent, Read, "another trailer inertia and other trailer tyres, the same hitch load", "divergence speed over the one before", 1, 1e-12,
            () => Divergence(Diverging with { TrailerInertia = 9000, TrailerStiffness = 50_000 }) / Divergence(Diverging)),
        Sign("divergence", Divergent, "less hitch load", "change of the divergence speed, sign", 1, () => Divergence(Diverging with { TrailerMassCentre = 3.95 }) - Divergence(Diverging)),
        Sign("moist air", "OpenStax, College Physics, question on humid air", "1 atm and 30 °C, dry air less saturated air", "difference of density, sign", 1,
            () => MoistAir.Density(101325, 303.15, 0) - MoistAir.Density(101325, 303.15, 1)),
    ];

    private static PublishedCheck Steadier(string source, string change, LateralRig rig) =>
        Sign("swing of the rig", source, change, "change of the damping at 100 km/h, sign", 1, () => Damping(rig) - Damping(Rig));

    private static PublishedCheck Sign(string model, string source, string inputs, string quantity, int sign, Func<double> difference) =>
        new(model, source, Read, inputs, quantity, sign, 0.01, () => Math.Sign(difference()));

    private static double Moved(LateralRig rig) => Math.Abs(Critical(rig) - Critical(Rig));

    private static double Damping(LateralRig rig) => SingleTrackModel.Modes(rig, 100 / 3.6).SwingDamping;

    private static double Critical(LateralRig rig) => CriticalSpeed.Snaking(rig, 90).First;

    private static double Divergence(LateralRig rig) => CriticalSpeed.Divergence(rig.Wheelbase, Understeer.Of(rig));
}
