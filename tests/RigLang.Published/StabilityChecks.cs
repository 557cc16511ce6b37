using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class StabilityChecks
{
    private const string Wong = "after Wong, Theory of Ground Vehicles, chapter 5, example 5.1(a)";
    private const string Gillespie = "after Gillespie 1992, chapter 6, example 1";
    private const string Minaker = "open multibody samples of B. P. Minaker (parameters read; his script inspects 18 m/s, just below the critical speed)";
    private const double PoundPerDegree = 4.4482216 * 180 / Math.PI, Pound = 0.45359237;

    public static IEnumerable<PublishedCheck> All =>
    [
        new("understeer", Wong, ValueFromMemory, "20.105 kN, 53.5 % on the front, 38.92 and 38.25 kN/rad a tyre", "understeer coefficient, rad", 0.0160, 0.00006,
            () => WongGradient * 9.81),
        new("understeer", Wong, ValueFromMemory, "the same, wheelbase 2.8 m", "characteristic speed, m/s", 41.5, 0.1, () => CriticalSpeed.Characteristic(2.8, WongGradient)),
        new("understeer", Gillespie, ValueFromMemory, "1901 and 1552 lb on the axles, 223 and 187 lb/deg a tyre", "gradient, deg/g", 0.11, 0.006,
            () => Understeer.DegreesPerG(GillespieGradient) * Constants.Gravity / 9.81),
        new("understeer", Gillespie, ValueFromMemory, "the same, wheelbase 100.6 in", "characteristic speed, ft/s", 370, 2, () => CriticalSpeed.Characteristic(100.6 * 0.0254, GillespieGradient) / 0.3048),
        new("snaking", Minaker, Read, "his car, trailer 2000 kg with mass centre at 2.9 m and axle at 3.0 m", "critical speed, m/s", 18.2, 0.3, () => CriticalSpeed.Snaking(OpenSet, 60).First),
        new("cornering stiffness", "OpenPBS parameter sets, Chalmers", Read, "heavy vehicles, stiffness over load", "1/rad", 5.5, 0.05, () => CorneringStiffness.HeavyTyre),
        Open("T2", 2.7, "understeer gradient, deg/g", -1.1869, 0.00006, rig => Understeer.DegreesPerG(Understeer.Of(rig))),
        Open("T2", 2.7, "divergence speed, m/s", 36.9623, 0.00006, rig => CriticalSpeed.Divergence(rig.Wheelbase, Understeer.Of(rig))),
        Open("T2", 2.7, "damping of the swing at 18 m/s, –", 0.17327, 0.000006, rig => SingleTrackModel.Modes(rig, 18).SwingDamping),
        Open("T3", 2.9, "understeer gradient, deg/g", 0.4668, 0.00006, rig => Understeer.DegreesPerG(Understeer.Of(rig))),
        Open("T3", 2.9, "critical speed, m/s", 18.4001, 0.00006, rig => CriticalSpeed.Snaking(rig, 60).First),
        Open("T3", 2.9, "damping of the swing at 18 m/s, –", 0.00920, 0.000006, rig => SingleTrackModel.Modes(rig, 18).SwingDamping),
        new("curve", "OpenStax, University Physics, section 6.3, exercise on an unbanked curve", Read, "96.8 km/h, radius 182.9 m", "least friction", 0.40, 0.005,
            () => Rollover.LateralAcceleration(96.8 / 3.6, 182.9) / 9.80),
    ];

    private static PublishedCheck Open(string set, double massCentre, string quantity, double expected, double tolerance, Func<LateralRig, double> value) => new(
        "lateral model", "open multibody samples of B. P. Minaker: parameters read, results computed by two independent formulations", Read,
        $"set {set}: his car, trailer 2000 kg, mass centre {massCentre} m and axle 3.0 m behind the ball", quantity, expected, tolerance, () => value(OpenSet with { TrailerMassCentre = massCentre }));

    private static double WongGradient => Understeer.Solo(20_105 / 9.81, 2.8 * 0.465, 2.8 * 0.535, 2 * 38_920, 2 * 38_250);

    private static double GillespieGradient
    {
        get
        {
            double wheelbase = 100.6 * 0.0254, mass = (1901 + 1552) * Pound;
            double toFront = wheelbase * 1552 / (1901 + 1552);
            return Understeer.Solo(mass, toFront, wheelbase - toFront, 2 * 223 * PoundPerDegree, 2 * 187 * PoundPerDegree);
        }
    }

    private static LateralRig OpenSet { get; } = new()
    {
        VehicleMass = 16975 / 9.81, VehicleInertia = 3508, ToFront = 1.289, ToRear = 1.596, ToBall = 2.7, TrailerMass = 2000, TrailerInertia = 3000,
        TrailerMassCentre = 2.9, TrailerAxle = 3.0, FrontStiffness = 80_000, RearStiffness = 80_000, TrailerStiffness = 80_000,
    };
}
