using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class UnitChecks
{
    private const string Program = "GNU units 2.22", Definition = "after the international definitions of 1959 and 1964";

    public static IEnumerable<PublishedCheck> All =>
    [
        new("unit", "40 CFR 1066.210, a_g", Read, "standard gravity", "m/s²", 9.80665, 5e-6, () => Constants.Gravity),
        Worth("lb", "kg", 0.45359237, 1e-12, Definition, ValueFromMemory), Worth("mi", "m", 1609.344, 1e-9, Definition, ValueFromMemory),
        Worth("us-gal", "m³", 3.785411784e-3, 1e-15, Definition, ValueFromMemory),
        Worth("lbf", "N", 4.4482216, 5e-8), Worth("lbf/mph", "N/(m/s)", 9.9503884, 5e-8), Worth("lbf/mph²", "N/(m/s)²", 22.258385, 5e-7),
        Worth("us-hp", "W", 745.69987, 5e-6), Worth("metric-hp", "W", 735.49875, 5e-6), Worth("psi", "Pa", 6894.7573, 5e-5),
        new("unit", Program, Read, "1 mile a US gallon", "km/L", 0.42514371, 5e-9, () => 1e-6 / UnitTable.Find("us-mpg")!.ToSi(1)),
        new("unit", Program, Read, "1 mile a US gallon", "L/100 km", 235.2146, 5e-5, () => UnitTable.Find("us-mpg")!.ToSi(1) * 1e8),
        new("fluid", "49 CFR 571.110 S4.3, water at 8.3 lb a gallon", Read, "water in a tank", "kg/L", 1, 0.006, () => Fluids.Density("water") / 1000),
    ];

    private static PublishedCheck Worth(string unit, string si, double worth, double tolerance, string source = Program, Provenance provenance = Read) =>
        new("unit", source, provenance, $"1 {unit}", si, worth, tolerance, () => UnitTable.Find(unit)!.ToSi(1));
}
