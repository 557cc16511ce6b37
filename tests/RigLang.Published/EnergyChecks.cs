using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class EnergyChecks
{
    private const string Cars = "US EPA test car list 2022 (A, B, C, test weight and measured MPGe), wheel work summed over the public HWFET schedule";
    private const string Label = "40 CFR 600.210-12, derived five-cycle label";
    private const string Jrc = "EU Joint Research Centre defaults for Regulation (EU) 2017/1151";
    private const double WattHour = 3600, Mile = 1609.344, Hour = 3600;

    private static BatteryDrive Typical { get; } = new(0.88, 0.65, double.PositiveInfinity, 300);

    private static BatteryDrive Motor { get; } = new(0.95, 0, 0, 0);

    public static IEnumerable<PublishedCheck> All =>
    [
        // The measured rows: work held by the battery over the wall energy. Mean over 74 vehicles 0.713, standard deviation 0.055; a model of one typical
        // efficiency must land within two of them.
        Highway("3875 lb, A 25.89, B 0.3449, C 0.01945", 207.32, 21.16), Highway("4250 lb, A 37.17, B 0.047, C 0.0144", 179.63, 26.88),
        Highway("4750 lb, A 23.987, B 0.29124, C 0.016006", 190.87, 31.60), Highway("5250 lb, A 48.599, B 0.64016, C 0.01862", 284.26, 27.64),
        Highway("6000 lb, A 43.7, B 0.175, C 0.01995", 246.10, 38.97),
        Wall("3875 lb", 141.2, 238.7), Wall("4250 lb", 170.1, 198.1), Wall("4750 lb", 142.8, 236.1), Wall("5250 lb", 97.9, 344.3), Wall("6000 lb", 117.7, 286.4),
        UrbanWall("3875 lb", 175.6, 192.0), UrbanWall("4250 lb", 185.3, 181.9), UrbanWall("4750 lb", 169.6, 198.8), UrbanWall("5250 lb", 103.8, 324.7), UrbanWall("6000 lb", 117.3, 287.3),
        Equivalency(2026, false, 82_049), Equivalency(2026, true, 73_844), Equivalency(2027, false, 79_989), Equivalency(2028, false, 50_427), Equivalency(2029, false, 36_820), Equivalency(2030, false, 28_996),
        new("consumption label", "after the example of 10 CFR 474 appendix", ValueFromMemory, "244.75 Wh/mi", "mi/gal", 335.24, 0.005, () => ConsumptionLabel.PetroleumEquivalency(2026, false) / 244.75),
        new("consumption label", "after the example of 10 CFR 474 appendix", ValueFromMemory, "244.75 Wh/mi, with petroleum accessories", "mi/gal", 301.71, 0.01,
            () => ConsumptionLabel.PetroleumEquivalency(2026, true) / 244.75),
        new("battery drive", "published motor maps 0.83 to 0.94 with a gearbox of 0.98", Read, "battery to wheel, middle of the band", "efficiency, –", 0.867, 0.055, () => BatteryDefaults.DriveEfficiency),
        new("battery drive", "typical value of published vehicle models", Read, "post to battery, alternating current", "efficiency, –", 0.86, 0.005, () => BatteryDefaults.AcChargeEfficiency),
        new("consumption label", "arithmetic of 33.705 kWh a gallon, as US labels state", ValueFromMemory, "100 MPGe", "wall energy, Wh/km", 209.433, 0.001,
            () => ConsumptionLabel.FromEquivalent(100) * 1000 / WattHour),
        new("consumption label", "arithmetic of 33.705 kWh a gallon, as US labels state", ValueFromMemory, "100 MPGe", "wall energy, kWh/100 mi", 33.705, 0.0005,
            () => ConsumptionLabel.FromEquivalent(100) * 100 * Mile / 3.6e6),
        new("consumption label", "after the example of 10 CFR 474 appendix", ValueFromMemory, "265 Wh/mi city, 220 Wh/mi highway", "combined, Wh/mi", 244.75, 0.005,
            () => ConsumptionLabel.Combined(265, 220)),
        new("consumption label", Label, Read, "unadjusted city 30 mpg, coefficients 0.004091 and 1.1601", "label, mpg", 23.386, 0.0005, () => ConsumptionLabel.City(30)),
        new("consumption label", Label, Read, "unadjusted highway 40 mpg, coefficients 0.003191 and 1.2945", "label, mpg", 28.127, 0.0005, () => ConsumptionLabel.Highway(40)),
        // 750 kg, 12 V: current is battery energy over time and voltage.
        new("motor current", "OpenStax, College Physics, section 20.4, exercise on an electric car, with answers", Read, "0 to 25 m/s in 60 s, efficiency 0.95", "current, A", 343, 1,
            () => Motor.SpeedChange(new RoadLoad(750, new Rolling(0), 0, 0), 0, 25).Battery / 60 / 12),
        new("motor current", "OpenStax, College Physics, section 20.4, exercise on an electric car, with answers", Read, "200 m climb in 120 s at 25 m/s against 500 N", "current, A", 2170, 5,
            () => Motor.FromWork((750 * 9.80 * 200) + (500 * 25.0 * 120), 0, 3000, 120).Battery / 120 / 12),
        new("motor current", "OpenStax, College Physics, section 20.4, exercise on an electric car, with answers", Read, "level at 25 m/s against 500 N", "current, A", 1100, 5,
            () => Motor.FromWork(500 * 25.0 * 60, 0, 1500, 60).Battery / 60 / 12),
        new("fuel as force", "OpenStax, University Physics, chapter 7, problem on a car's fuel: 2.0 gal of 140 MJ (the force is computed)", Read, "778 N over 108 km at 30 %",
            "fuel, MJ", 280, 0.4, () => FuelOfForce / 1e6),
        Mass("petrol", 43.2, Fuel.Petrol), Mass("diesel", 43.1, Fuel.Diesel), Mass("LPG", 46.0, Fuel.LiquefiedGas), Mass("natural gas", 45.1, Fuel.NaturalGas),
        // E85 is 85 parts of ethanol by volume at most; its mass value must lie between ethanol's 26.8 and petrol's 43.2, near 0.8 of the way down.
        new("heating value", Jrc + ": ethanol 26.8, petrol 43.2 MJ/kg, mixed 85 to 15", Read, "E85, volume table over density", "MJ/kg", 29.3, 0.6, () => Fuel.E85.HeatingValue / 1e6),
        new("heating value", "energy.ca.gov table 111 800 Btu a gallon, GNU units 115 000: blends and seasons, a band about ours", Read, "petrol", "kWh/l", 8.8, 0.2, () => Fuel.Petrol.VolumeHeatingValue / 3.6e9),
        new("heating value", "AFDC and TEDB tables: 116 090 Btu a gallon", Read, "US conventional petrol", "kWh/l", 8.988, 0.0005, () => Fuel.Petrol.VolumeHeatingValue / 3.6e9),
        new("heating value", "energy.ca.gov gallon-equivalent table: 127 500 Btu a gallon", Read, "diesel", "kWh/l", 9.871, 0.0005, () => Fuel.Diesel.VolumeHeatingValue / 3.6e9),
        new("heating value", "energy.ca.gov gallon-equivalent table: 81 700 Btu a gallon", Read, "E85", "kWh/l", 6.325, 0.0005, () => Fuel.E85.VolumeHeatingValue / 3.6e9),
        new("heating value", "energy.ca.gov gallon-equivalent table: 83 200 Btu a gallon", Read, "LPG", "kWh/l", 6.441, 0.0005, () => Fuel.LiquefiedGas.VolumeHeatingValue / 3.6e9),
        // Two independent tables of one fuel must close: by mass and density, by volume.
        new("heating value", "EU Joint Research Centre defaults for Regulation (EU) 2017/1151: 43.2 MJ/kg", Read, "petrol of 745 kg/m³, volume table over density", "MJ/kg", 43.2, 0.5,
            () => Fuel.Petrol.VolumeHeatingValue / Fuel.Petrol.Density / 1e6),
        new("heating value", "EU Joint Research Centre defaults for Regulation (EU) 2017/1151: 43.1 MJ/kg", Read, "diesel of 835 kg/m³, volume table over density", "MJ/kg", 43.1, 0.7,
            () => Fuel.Diesel.VolumeHeatingValue / Fuel.Diesel.Density / 1e6),
        new("carbon dioxide", "40 CFR 600: 8887 g a gallon of petrol", Read, "petrol burnt", "kg a litre", 2.348, 0.001, () => Fuel.Petrol.CarbonDioxide / 1000),
        new("carbon dioxide", "40 CFR 600: 10 180 g a gallon of diesel", Read, "diesel burnt", "kg a litre", 2.689, 0.001, () => Fuel.Diesel.CarbonDioxide / 1000),
        // A newer report of the same body; its cars and its mix of driving are others, so its figures tell the band.
        new("heating and cooling", "AAA, newer report (summary): range −39.0 % at 20 °F", Read,
            "the same car of 160 Wh/km", "share of range left with heater at −6.7 °C", 0.61, 0.05, () => RangeShare(-6.7)),
        new("heating and cooling", "AAA, newer report (summary): range −8.5 % at 95 °F; five other vehicles", Read,
            "the same car of 160 Wh/km", "share of range left with air conditioning at 35 °C", 0.915, 0.10, () => RangeShare(35)),
        new("heating and cooling", "AAA 2019, five vehicles on a dynamometer, without heating or cooling", Read, "−6.7 °C", "share of range left", 0.88, 0.005, () => BatteryDefaults.TemperatureShare(273.15 - 6.7)),
        new("heating and cooling", "AAA 2019, five vehicles on a dynamometer, without heating or cooling", Read, "35 °C", "share of range left", 0.96, 0.005, () => BatteryDefaults.TemperatureShare(308.15)),
        new("heating and cooling", "AAA 2019, five vehicles on a dynamometer, 20 °F: range −41 % with heater, −12 % without", Read,
            "car of 160 Wh/km in mixed driving at 45 km/h (our assumption for the five)", "share of range left with heater at −6.7 °C", 0.59, 0.04, () => RangeShare(-6.7)),
        new("heating and cooling", "AAA 2019, five vehicles on a dynamometer, 95 °F: range −17 % with air conditioning, −4 % without", Read,
            "car of 160 Wh/km in mixed driving at 45 km/h (our assumption for the five)", "share of range left with air conditioning at 35 °C", 0.83, 0.04, () => RangeShare(35)),
        new("geodesy", "after the WGS 84 definition, equator 40 075 017 m around", ValueFromMemory, "one degree of longitude on the equator", "m", 111_319.49, 0.01, () => Geodesy.Distance(0, 0, 0, 1)),
        new("geodesy", "after the WGS 84 definition, quarter meridian 10 001 966 m", ValueFromMemory, "equator to pole", "m", 10_001_966, 30, () => Geodesy.Distance(0, 10, 90, 10)),
        new("geodesy", "after the WGS 84 definition, a degree of latitude at the equator", ValueFromMemory, "0.5° south to 0.5° north", "m", 110_574.3, 0.3, () => Geodesy.Distance(-0.5, 10, 0.5, 10)),
        new("geodesy", "after the WGS 84 definition, a degree of latitude at 45°", ValueFromMemory, "44.5° to 45.5°", "m", 111_131.8, 0.3, () => Geodesy.Distance(44.5, 10, 45.5, 10)),
    ];

    /// <summary>Fuel that a force of 778 N takes over 108 km in an engine that runs at its best point of 30 % with no losses behind it, J.</summary>
    private static double FuelOfForce
    {
        get
        {
            const double force = 778, speed = 20;
            var load = new RoadLoad(force / 0.01 / Constants.Gravity, new Rolling(0.01), 0);
            return new CombustionDrive(EngineMap.Petrol, force * speed / 0.20, 1).WithBestEfficiency(0.30).Over(load, new RouteSegment(108_000, 0, speed, 1.2)).Energy;
        }
    }

    private static PublishedCheck Highway(string car, double traction, double braking) => new("battery energy on the highway cycle", Cars, Read,
        $"{car}: {traction} Wh/mi driven, {braking} Wh/mi held back; efficiency 0.88, regeneration 0.65, charger 0.88, 0.3 kW auxiliary",
        "wheel work over wall energy", 0.713, 0.11, () =>
        {
            LegEnergy energy = Typical.FromWork(traction * WattHour, braking * WattHour, Mile, 765 / 10.2569);
            return (energy.Traction - energy.Braking) / (energy.Battery / 0.88);
        });

    private static PublishedCheck Mass(string name, double heatingValue, Fuel fuel) =>
        new("heating value", Jrc, Read, name, "MJ/kg", heatingValue, 0.05, () => fuel.HeatingValue / 1e6);

    private static PublishedCheck Equivalency(int year, bool petroleumAccessories, double wattHours) => new("consumption label", "10 CFR 474.3", Read,
        $"model year {year}{(petroleumAccessories ? ", with petroleum accessories" : "")}", "petroleum-equivalency factor, Wh/gal", wattHours, 0.5, () => ConsumptionLabel.PetroleumEquivalency(year, petroleumAccessories));

    private static PublishedCheck UrbanWall(string car, double equivalent, double wattHoursPerMile) => new("consumption label", Cars, Read,
        $"{car}, {equivalent} MPGe on the urban cycle", "wall energy, Wh/mi", wattHoursPerMile, 0.05 + (wattHoursPerMile * 0.05 / equivalent),
        () => ConsumptionLabel.FromEquivalent(equivalent) * Mile / WattHour);

    // The label is rounded to a tenth, the energy too.
    private static PublishedCheck Wall(string car, double equivalent, double wattHoursPerMile) => new("consumption label", Cars, Read,
        $"{car}, {equivalent} MPGe on the highway cycle", "wall energy, Wh/mi", wattHoursPerMile, 0.05 + (wattHoursPerMile * 0.05 / equivalent),
        () => ConsumptionLabel.FromEquivalent(equivalent) * Mile / WattHour);

    private static double RangeShare(double celsius)
    {
        // Energy over distance grows by the lost share and by the auxiliary power beyond the mild one.
        double temperature = celsius + 273.15, perSecond = 160 * WattHour / 1000 * (45 / 3.6);
        double extra = BatteryDefaults.Auxiliary(temperature) - BatteryDefaults.MildAuxiliary;
        return perSecond / ((perSecond / BatteryDefaults.TemperatureShare(temperature)) + extra);
    }
}
