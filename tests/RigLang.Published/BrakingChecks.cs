using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class BrakingChecks
{
    private const string Sight = "AASHTO stopping sight distance (formula, 11.2 ft/s² and 2.5 s read in Texas DOT, Roadway Design Manual 4.11.1)";
    private const string Grades = "after AASHTO, Green Book table 3-2";
    private const string Fmvss = "49 CFR 571.135";
    private const double Mph = 1609.344 / 3600, Foot = 0.3048;

    private static readonly (double Speed, double Distance)[] Customary =
    [
        (15, 76.7), (20, 111.9), (25, 151.9), (30, 196.6), (35, 246.2), (40, 300.6), (45, 359.7), (50, 423.7), (55, 492.5), (60, 566.0), (65, 644.4), (70, 727.6), (75, 815.5), (80, 908.3),
    ];

    private static readonly (double Speed, double Distance)[] Metric =
    [
        (20, 18.5), (30, 31.2), (40, 46.2), (50, 63.4), (60, 83.0), (70, 104.9), (80, 129.0), (90, 155.5), (100, 184.2), (110, 215.2), (120, 248.6), (130, 284.2),
    ];

    public static IEnumerable<PublishedCheck> All =>
    [
        // The published coefficients 1.47, 1.075, 0.278, 0.039 are rounded: 0.3 % of the distance in feet, 1 % in metres.
        .. Customary.Select(row => new PublishedCheck("stopping distance", Sight, Read, $"{row.Speed} mi/h, level", "distance, ft", row.Distance, 0.003 * row.Distance,
            () => StoppingDistance.Of(row.Speed * Mph, StoppingDistance.SightReaction, 11.2 * Foot) / Foot)),
        .. Metric.Select(row => new PublishedCheck("stopping distance", Sight, Read, $"{row.Speed} km/h, level", "distance, m", row.Distance, 0.010 * row.Distance,
            () => StoppingDistance.Of(row.Speed / 3.6, StoppingDistance.SightReaction, StoppingDistance.SightDeceleration))),
        // The tables that roads are designed by round up to the next 5.
        .. Designed(Customary, [80, 115, 155, 200, 250, 305, 360, 425, 495, 570, 645, 730, 820, 910], "mi/h", "ft", Mph, 11.2 * Foot, Foot),
        .. Designed(Metric, [20, 35, 50, 65, 85, 105, 130, 160, 185, 220, 250, 285], "km/h", "m", 1 / 3.6, 3.4, 1),
        Grade(60, -0.03, 598), Grade(60, -0.06, 638), Grade(60, -0.09, 686), Grade(60, 0.03, 538), Grade(60, 0.06, 515), Grade(60, 0.09, 495),
        MetricGrade(-0.03, 194), MetricGrade(-0.06, 207), MetricGrade(-0.09, 223), MetricGrade(0.03, 174), MetricGrade(0.06, 167), MetricGrade(0.09, 160),
        new("stopping distance", "OpenStax, University Physics, section 3.4, example on dry and wet concrete", Read, "30.0 m/s, 7.00 m/s²", "braking distance, m", 64.3, 0.05, () => StoppingDistance.Of(30, 0, 7)),
        new("stopping distance", "OpenStax, University Physics, section 3.4, example on dry and wet concrete", Read, "30.0 m/s, 5.00 m/s²", "braking distance, m", 90.0, 0.05, () => StoppingDistance.Of(30, 0, 5)),
        new("stopping distance", "OpenStax, University Physics, chapter 6, exercise with answer", Read, "1000 kg at 100.0 km/h, friction 0.500", "braking distance, m", 78.7, 0.06,
            () => StoppingDistance.Of(100 / 3.6, 0, RigBraking.Full(1000, 0, 0.500, 0).Deceleration)),
        new("stopping limit", Fmvss + ", cold effectiveness", Read, "100 km/h", "longest stop, m", 70, 0.01, () => StoppingDistance.LightVehicleLimit(100 / 3.6)),
        new("stopping limit", Fmvss + ", high speed", Read, "100 km/h, c 0.0067", "longest stop, m", 77, 0.01, () => StoppingDistance.Limit(100 / 3.6, 0.0067)),
        new("stopping limit", Fmvss + ", antilock failed", Read, "100 km/h, c 0.0075", "longest stop, m", 85, 0.01, () => StoppingDistance.Limit(100 / 3.6, 0.0075)),
        new("stopping limit", Fmvss + ", proportioning failed", Read, "100 km/h, c 0.0100", "longest stop, m", 110, 0.01, () => StoppingDistance.Limit(100 / 3.6, 0.0100)),
        new("stopping limit", Fmvss + ", one circuit failed", Read, "100 km/h, c 0.0158", "longest stop, m", 168, 0.01, () => StoppingDistance.Limit(100 / 3.6, 0.0158)),
        new("stopping limit", "after UN R13, light goods vehicles: 0.15 V + V²/130", ValueFromMemory, "V²/130", "deceleration, m/s²", 5.0, 0.02, () => StoppingDistance.DecelerationOfLimit(1 / 130.0)),
        new("parking brake", Fmvss + ", parking brake", Read, "force that holds 2400 kg on 20 %", "grade held", 0.20, 1e-9,
            () => RigBraking.HeldGrade(RigBraking.Holding(2400, RigBraking.VehicleParkingGrade), 2400)),
        new("parking brake", "StVZO section 41(9)", Read, "force that holds 1500 kg on 18 %", "grade held", 0.18, 1e-9,
            () => RigBraking.HeldGrade(RigBraking.Holding(1500, RigBraking.TrailerParkingGrade), 1500)),
        new("overrun brake", "after UN R13 annex 12, trailer with one axle", ValueFromMemory, "push of 0.10 of the weight", "brake force over weight", 0.49, 1e-9,
            () => OverrunBrake.ByRegulation.Force(0.59, 1, 10)),
        new("stopping limit", "after UN R13-H, cold brakes", ValueFromMemory, "0.0060 m/(km/h)²", "deceleration, m/s²", 6.43, 0.005, () => StoppingDistance.DecelerationOfLimit(0.0060)),
        new("stopping limit", "after UN R13-H, high speed", ValueFromMemory, "0.0067 m/(km/h)²", "deceleration, m/s²", 5.76, 0.005, () => StoppingDistance.DecelerationOfLimit(0.0067)),
        Force(21, 65.2), Force(17, 52.8), Force(14, 43.5),
        new("brake heat", "OpenStax, University Physics vol. 2, section 1.4, example on a truck's brakes", Read, "10 000 kg down 75.0 m (g 9.80)", "energy, MJ", 7.35, 0.006,
            () => DescentEnergy.Of(new RoadLoad(10_000, new Rolling(0), 0), new RouteSegment(1000, Slope.FromRise(-75, 1000), 15, 1.2)).ToHold / 1e6),
        new("brake heat", "OpenStax, University Physics vol. 2, section 1.4, example on a truck's brakes", Read, "a tenth of 7.35 MJ in 10 kg of 800 J/(kg·K)", "rise, K", 92, 0.5, () => BrakeHeat.Rise(7.35e5, 10, 800)),
        new("brake heat", "OpenStax, College Physics, section 14.2, example on a truck's brakes", Read, "the same in 100 kg", "rise, K", 9.2, 0.05, () => BrakeHeat.Rise(7.35e5, 100, 800)),
        new("brake heat", "OpenStax, College Physics, section 14.2, exercise", Read, "twice the speed", "times the rise", 4, 1e-9,
            () => BrakeHeat.Rise(SpeedWork(30), 10) / BrakeHeat.Rise(SpeedWork(15), 10)),
    ];

    private static IEnumerable<PublishedCheck> Designed(
        (double Speed, double Distance)[] rows, double[] designed, string speedUnit, string unit, double perSpeed, double deceleration, double perUnit) =>
        rows.Zip(designed).Select(row => new PublishedCheck("stopping distance", Sight + ", design values, the next 5 above", Read, $"{row.First.Speed} {speedUnit}, level", $"distance, {unit}", row.Second - 2.5,
            2.5 + (0.01 * row.Second), () => StoppingDistance.Of(row.First.Speed * perSpeed, StoppingDistance.SightReaction, deceleration) / perUnit));

    private static double SpeedWork(double speed) => new BatteryDrive(1, 0, 0, 0).SpeedChange(new RoadLoad(1500, new Rolling(0), 0, 0), speed, 0).Brakes;

    private static PublishedCheck Grade(double speed, double grade, double distance) => new("stopping distance on a grade", Grades, ValueFromMemory,
        $"{speed} mi/h, grade {grade * 100} %", "distance, ft", distance, 2.5, () => StoppingDistance.Of(speed * Mph, 2.5, 11.2 * Foot, grade) / Foot);

    private static PublishedCheck MetricGrade(double grade, double distance) => new("stopping distance on a grade", Grades, ValueFromMemory,
        $"100 km/h, grade {grade * 100} %", "distance, m", distance, 1.2, () => StoppingDistance.Of(100 / 3.6, 2.5, 3.4, grade));

    // Force in per cent of weight is deceleration over gravity, which the note rounds to 32.2 ft/s².
    private static PublishedCheck Force(double deceleration, double share) => new("brake force", "49 CFR 393.52(d), note (a)", Read, $"{deceleration} ft/s²", "force, % of weight", share, 0.1,
        () => 100 * RigBraking.Push(1, deceleration * Foot, 0) / Constants.Gravity);
}
