using RigLang.Mechanics;
using RigLang.Model.Facts;
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
        .. Coefficients(34.98, 0.0865, 0.0148, 155.6, 0.861, 0.3294), .. Coefficients(37.17, 0.0470, 0.0144, 165.3, 0.468, 0.3205),
        .. Coefficients(34.26, 0.3191, 0.0142, 152.4, 3.175, 0.3161), .. Coefficients(35.00, -0.3559, 0.02137, 155.7, -3.541, 0.4757),
        .. Coefficients(42.17, 0.5391, 0.01828, 187.6, 5.364, 0.4069),
        new("road load by dynamometer coefficients", "40 CFR 1066.310", Read, "air density to which coast-downs are corrected", "kg/m³", 1.17, 0.005, () => DynamometerRoadLoad.ReferenceDensity),
        Body(VehicleBody.Saloon, 0.27), Body(VehicleBody.Hatch, 0.30), Body(VehicleBody.Estate, 0.28), Body(VehicleBody.SportUtility, 0.35), Body(VehicleBody.PeopleCarrier, 0.30),
        Body(VehicleBody.Van, 0.35), Body(VehicleBody.PickUp, 0.40),
        // Two sources of one body differ by their samples.
        new("drag of a body", "OpenStax, University Physics, section 6.4, table of drag coefficients; another sample of vehicles than ours", Read, "pick-up", "drag coefficient, –", 0.43, 0.04,
            () => DragDefaults.Coefficient(VehicleBody.PickUp)),
        new("drag of a body", "OpenStax, University Physics, section 6.4, table of drag coefficients; another sample of vehicles than ours", Read, "large car", "drag coefficient, –", 0.28, 0.015,
            () => DragDefaults.Coefficient(VehicleBody.Saloon)),
        new("drag of a body", Jrc, Read, "1.80 m wide, 1.50 m high: 0.84 of width and height", "frontal area, m²", 2.268, 0.014, () => DragDefaults.FrontalArea(1.80, 1.50)),
        new("drag of a body", Jrc, Read, "roof box", "times the drag area", 1.2, 0.05, () => DragDefaults.RoofBoxFactor),
        new("road load", Jrc, Read, "1.5 % of the mass for each axle that turns", "effective over actual mass", 1.03, 0.005, () => new RoadLoad(1000, new Rolling(0), 0).EffectiveMass / 1000),
        new("road load", Jrc, Read, "new tyre on a dry road", "friction, –", 0.85, 0.005, () => FigureFacts.Friction.Estimate!.Value(null!, null!)),
        new("rolling coefficient", "engineeringtoolbox.com, rolling friction and rolling resistance", Read, "gravel, rolled", "–", 0.02, 0.0005, () => Rolling.Gravel.At(0)),
        new("rolling coefficient", "SAE truck tyres, radial, after Gillespie 1992", ValueFromMemory, "60 mi/h on smooth concrete", "–", 0.00656, 0.000005, () => Rolling.RadialTruck.At(60 * Mph)),
        new("rolling coefficient", Tyres, Read, "car tyre at 2.5 bar and 80 km/h, eq. 3", "between 0.010 and 0.015, –", 0.0125, 0.00249, () => Rolling.FromPressure(2.5e5).At(80 / 3.6)),
        new("rolling coefficient", Tyres, Read, "truck tyre at 8 bar and 80 km/h, eq. 3", "between 0.006 and 0.010, –", 0.008, 0.00159, () => Rolling.FromPressure(8e5).At(80 / 3.6)),
    ];

    private const string Jrc = "EU Joint Research Centre defaults for Regulation (EU) 2017/1151";

    private static PublishedCheck Body(VehicleBody body, double coefficient) =>
        new("drag of a body", Jrc, Read, $"{body}", "drag coefficient, –", coefficient, 0.005, () => DragDefaults.Coefficient(body));

    private static IEnumerable<PublishedCheck> Coefficients(double a, double b, double c, double f0, double f1, double f2)
    {
        string inputs = $"A {a} lbf, B {b} lbf/mph, C {c} lbf/mph²";
        DynamometerRoadLoad load = DynamometerRoadLoad.FromCustomary(a, b, c);
        yield return new("road load by dynamometer coefficients", Epa, Read, inputs, "F0, N", f0, 0.06, () => load.F0);
        yield return new("road load by dynamometer coefficients", Epa, Read, inputs, "F1, N/(m/s)", f1, 0.0006, () => load.F1);
        yield return new("road load by dynamometer coefficients", Epa, Read, inputs, "F2, N/(m/s)²", f2, 0.00006, () => load.F2);
    }

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
