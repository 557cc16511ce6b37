using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class TyreChecks
{
    private const string Table = "load index and speed symbol tables of ISO 4000-1, ETRTO and UN R30";

    private static readonly (int First, Provenance Provenance, string Where, double[] Masses)[] Rows =
    [
        (60, Read, "alike in six public source files", [250, 257, 265, 272, 280, 290, 300, 307, 315, 325]),
        (70, Read, "alike in six public source files", [335, 345, 355, 365, 375, 387, 400, 412, 425, 437]),
        (80, Read, "alike in six public source files", [450, 462, 475, 487, 500, 515, 530, 545, 560, 580]),
        (90, Read, "alike in six public source files", [600, 615, 630, 650, 670, 690, 710, 730, 750, 775]),
        (100, Read, "alike in six public source files", [800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030]),
        (110, Read, "in one public source file", [1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360]),
        (120, Read, "alike in six public source files", [1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850]),
        (130, Read, "alike in six public source files", [1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430]),
        (140, Read, "alike in six public source files", [2500, 2575, 2650, 2725, 2800, 2900, 3000, 3075, 3150, 3250]),
        (150, Read, "alike in five public source files", [3350]),
    ];

    private static readonly (SpeedSymbol Symbol, double Speed)[] Speeds =
    [
        (SpeedSymbol.A1, 5), (SpeedSymbol.A2, 10), (SpeedSymbol.A3, 15), (SpeedSymbol.A4, 20), (SpeedSymbol.A5, 25), (SpeedSymbol.A6, 30),
        (SpeedSymbol.A7, 35), (SpeedSymbol.A8, 40), (SpeedSymbol.B, 50), (SpeedSymbol.C, 60), (SpeedSymbol.D, 65), (SpeedSymbol.E, 70),
        (SpeedSymbol.F, 80), (SpeedSymbol.G, 90), (SpeedSymbol.J, 100), (SpeedSymbol.K, 110), (SpeedSymbol.L, 120), (SpeedSymbol.M, 130),
        (SpeedSymbol.N, 140), (SpeedSymbol.P, 150), (SpeedSymbol.Q, 160), (SpeedSymbol.R, 170), (SpeedSymbol.S, 180), (SpeedSymbol.T, 190),
        (SpeedSymbol.U, 200), (SpeedSymbol.H, 210), (SpeedSymbol.V, 240), (SpeedSymbol.W, 270), (SpeedSymbol.Y, 300),
    ];

    public static IEnumerable<PublishedCheck> All =>
    [
        .. Rows.SelectMany(row => row.Masses.Select((mass, column) => new PublishedCheck(
            "load index", $"{Table}, {row.Where}", row.Provenance, $"load index {row.First + column}", "rated mass, kg", mass, 0.5, () => LoadIndex.Mass(row.First + column)))),
        .. Speeds.Select(pair => new PublishedCheck(
            "speed symbol", $"{Table}, alike in six public source files", Read, $"symbol {pair.Symbol}", "speed, km/h", pair.Speed, 0.01, () => SpeedSymbols.Speed(pair.Symbol) * 3.6)),
        new("tyre pressure", "OpenStax, College Physics, section 13.3, example on a tyre's pressure", Read,
            "7.00e5 Pa absolute at 18 °C, warmed to 35 °C", "absolute pressure, Pa", 7.41e5, 500, () => TyreLoad.WarmedPressure(7.00e5, 291.15, 308.15)),
    ];
}
