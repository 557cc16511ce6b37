using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class PowerChecks
{
    private const double Foot = 0.3048, Pound = 0.45359237;

    public static IEnumerable<PublishedCheck> All =>
    [
        new("top speed", "after Mannering and Washburn, Principles of Highway Engineering, example 2.1", ValueFromMemory,
            "2500 lb, C_d 0.38, 20 ft², air 0.002378 slug/ft³, rolling 0.01 (1 + v/147 ft/s), 50 hp", "highest speed, ft/s", 132.8, 0.1, () => Gradeability.HighestSpeed(
                new RoadLoad(2500 * Pound, new Rolling(0.01, 0.01 / (147 * Foot)), 0.38 * 20 * Foot * Foot), new PowerDrive(50 * 745.69987), 0, 0.002378 * 515.3788, 90) / Foot),
        new("top speed", "after Mannering and Washburn, Principles of Highway Engineering, example 2.1", ValueFromMemory, "the same car", "highest speed, mi/h", 90.6, 0.1,
            () => Gradeability.HighestSpeed(
                new RoadLoad(2500 * Pound, new Rolling(0.01, 0.01 / (147 * Foot)), 0.38 * 20 * Foot * Foot), new PowerDrive(50 * 745.69987), 0, 0.002378 * 515.3788, 90) * 3600 / 1609.344),
        new("acceleration", "OpenStax, University Physics, section 7.4, exercise on a car's power", Read, "850 kg, 40.0 hp of 746 W, to 15.0 m/s", "time at full power, s", 3.20, 0.005,
            () => SpeedGain.Full(new RoadLoad(850, new Rolling(0), 0, 0), new PowerDrive(40 * 746), 0, 15, 1.2).Time),
        // 392 cars: 0 to 60 mi/h takes 2.38 times as long (median) as their power alone would. Gears and the curve of a typical engine must land near that.
        new("acceleration", "cars data set 1970 to 1982 (vega-datasets 3.2.1), fit 3.344 + 0.6791 kg/kW over 392 cars, r 0.76", Read,
            "1350 kg and 78 kW of our choosing, three gears, driveline 0.80; a band, not a value", "time 0 to 60 mi/h, s", 15.1, 3.0, () => SpeedGain.Full(new RoadLoad(1350, new Rolling(0.014), 0.85, 0.08), Gears, 0, 26.82, 1.2, tractionLimit: 5500).Time),
    ];

    // A typical engine of those years: 78 kW at 4400 rpm, gross, with what its fans and exhaust took left out of the wheel power.
    private static GearedDrive Gears { get; } = new(
        [new(105, 150), new(210, 180), new(315, 185), new(460, 169), new(500, 140)], [2.5, 1.5, 1.0], 3.1, 0.30, 0.80);
}
