using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class RoadLoadChecks
{
    private const string Epa = "US EPA certification data, model year 2022, rows that are not sales-weighted";
    private const string Tyres = "engineeringtoolbox.com, rolling friction and rolling resistance";
    private const double Mph = 1609.344 / 3600, Horsepower = 745.69987, PoundForce = 4.4482216, Foot = 0.3048, Pound = 0.45359237, SlugPerCubicFoot = 515.3788;

    public static IEnumerable<PublishedCheck> All =>
    [
        new("air drag", "OpenStax, University Physics, section 6.4, exercise on drag at two speeds", Read, "65 and 110 km/h", "ratio of the air forces", 2.86, 0.005,
            () => Car.AirForce(110 / 3.6, 1.2) / Car.AirForce(65 / 3.6, 1.2)),
        new("grade power", "OpenStax, University Physics, section 7.4, example 'Automotive Power Driving Uphill'", Read,
            "1200 kg up 15 % at 90 km/h, a quarter of the power to air and friction (g 9.8 there)", "power, kW", 58, 0.5,
            () => new RoadLoad(1200, new Rolling(0), 0).GradeForce(0.15) * 25 / 0.75 / 1000),
        new("acceleration", "OpenStax, University Physics, section 7.4, exercise on a car's power", Read, "850 kg, 40.0 hp of 746 W, to 15.0 m/s", "time, s", 3.20, 0.005,
            () => 0.5 * new RoadLoad(850, new Rolling(0), 0, 0).EffectiveMass * 15 * 15 / (40 * 746)),
        new("acceleration", "OpenStax, University Physics, section 7.4, exercise on a car's power", Read, "the same with a climb of 3.00 m", "time, s", 4.04, 0.005,
            () => ((0.5 * 850 * 15 * 15) + (new RoadLoad(850, new Rolling(0), 0).GradeForce(Slope.FromRise(3, 40)) * 40)) / (40 * 746)),
        .. Truck(),
        new("top speed", "after Mannering and Washburn, Principles of Highway Engineering, example 2.1", ValueFromMemory,
            "2500 lb, C_d 0.38, 20 ft², air 0.002378 slug/ft³, rolling 0.01 (1 + v/147 ft/s), 50 hp", "power at 132.8 ft/s, hp", 50, 0.05, () => Sedan.Power(132.8 * Foot, 0.002378 * SlugPerCubicFoot) / Horsepower),
        Certified("saloon, battery, 4250 lb", 34.98, 0.0865, 0.0148, 10.2), Certified("saloon, battery, 4250 lb", 37.17, 0.0470, 0.0144, 10.1),
        Certified("crossover, battery, 4750 lb", 34.26, 0.3191, 0.0142, 11.4), Certified("saloon, petrol, 3250 lb", 35.00, -0.3559, 0.02137, 9.4),
        Certified("crossover, hybrid, 4500 lb", 42.17, 0.5391, 0.01828, 15.3),
        new("rolling coefficient", Tyres, Read, "car tyre at 2.5 bar and 80 km/h, eq. 3", "between 0.010 and 0.015, –", 0.0125, 0.00249, () => Rolling.FromPressure(2.5e5).At(80 / 3.6)),
        new("rolling coefficient", Tyres, Read, "truck tyre at 8 bar and 80 km/h, eq. 3", "between 0.006 and 0.010, –", 0.008, 0.00159, () => Rolling.FromPressure(8e5).At(80 / 3.6)),
    ];

    private static RoadLoad Car { get; } = new(1500, new Rolling(0.01), 0.7);

    // f = 0.01 (1 + v/147 ft/s)
    private static RoadLoad Sedan { get; } = new(2500 * Pound, new Rolling(0.01, 0.01 / (147 * Foot)), 0.38 * 20 * Foot * Foot);

    private static IEnumerable<PublishedCheck> Truck()
    {
        // The example takes its air density from its own formula, 0.00236 slug/ft³ at 29.92 inHg and 59 °F: 0.7 % below the standard atmosphere.
        const string source = "after Gillespie 1992, chapter 4, example 1";
        const string inputs = "80 000 lb truck at 60 mi/h, 8 x 13.5 ft, C_d 0.65, 60 °F, 26.00 inHg";
        double density = 0.00236 * (26.00 / 29.92) * (519.0 / 520) * SlugPerCubicFoot, speed = 60 * Mph;
        var truck = new RoadLoad(80_000 * Pound, Rolling.RadialTruck, 0.65 * 8 * 13.5 * Foot * Foot);
        yield return new("road load", source, ValueFromMemory, inputs, "air drag, lbf", 557, 1, () => truck.AirForce(speed, density) / PoundForce);
        yield return new("road load", source, ValueFromMemory, inputs, "rolling, lbf", 525, 1, () => truck.RollingForce(speed) / PoundForce);
        yield return new("road load", source, ValueFromMemory, inputs, "total, lbf", 1081, 1.5, () => truck.Force(speed, density) / PoundForce);
        yield return new("road load", source, ValueFromMemory, inputs, "power, hp", 173, 0.5, () => truck.Power(speed, density) / Horsepower);
    }

    private static PublishedCheck Certified(string body, double a, double b, double c, double power) => new("road load by dynamometer coefficients", Epa, Read,
        $"{body}: A {a} lbf, B {b} lbf/mph, C {c} lbf/mph²", "power at 50 mi/h, hp", power, 0.055,
        () => DynamometerRoadLoad.FromCustomary(a, b, c).Power(50 * Mph) / Horsepower);
}
