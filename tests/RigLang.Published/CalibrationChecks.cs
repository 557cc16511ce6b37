using RigLang.Mechanics;
using static RigLang.Published.Provenance;

namespace RigLang.Published;

internal static class CalibrationChecks
{
    private const string Table = "40 CFR 86.529-98, figure F98-9";

    // Equivalent inertia kg, A N, C N/(km/h)², force at 65 km/h N, coast-down time from 70 to 60 km/h s.
    private static readonly (double Mass, double A, double C, double Force, double Time)[] Rows =
    [
        (100, 0.0, 0.0224, 94.8, 2.95), (120, 1.70, 0.0230, 98.8, 3.39), (140, 3.44, 0.0235, 102.9, 3.80), (180, 6.94, 0.0246, 111.0, 4.53), (200, 8.69, 0.0252, 115.1, 4.85),
        (220, 10.43, 0.0257, 119.2, 5.15), (240, 12.18, 0.0263, 123.2, 5.43), (260, 13.93, 0.0268, 127.3, 5.70), (280, 15.68, 0.0274, 131.4, 5.95), (300, 17.43, 0.0279, 135.4, 6.18),
        (320, 19.17, 0.0285, 139.5, 6.40), (340, 20.92, 0.0290, 143.6, 6.60),
    ];

    public static IEnumerable<PublishedCheck> All =>
    [
        .. Rows.Select(row => new PublishedCheck("coast-down", Table, Read, Inputs(row.Mass, row.A, row.C), "time from 70 to 60 km/h, s", row.Time, 0.012,
            () => Vehicle(row.Mass, row.A, row.C).Time(70 / 3.6, 60 / 3.6))),
        .. Rows.Select(row => new PublishedCheck("coast-down", Table, Read, Inputs(row.Mass, row.A, row.C), "force at 65 km/h, N", row.Force, 0.25,
            () => new DynamometerRoadLoad(row.A, 0, row.C * 3.6 * 3.6).Force(65 / 3.6))),
        // The row of 160 kg is out by 0.075 s in the table: its force fits its neighbours, its time does not. Held to show the model, not the misprint.
        new("coast-down", Table + ", row of 160 kg whose time is misprinted by its neighbours", Read, Inputs(160, 5.19, 0.0241), "time from 70 to 60 km/h less the printed 4.10 s, s", 0.075, 0.002,
            () => Vehicle(160, 5.19, 0.0241).Time(70 / 3.6, 60 / 3.6) - 4.10),
    ];

    private static string Inputs(double mass, double a, double c) => $"{mass} kg, A {a} N, C {c} N/(km/h)²";

    private static CoastDown Vehicle(double mass, double a, double c) => new(mass, a, c * 3.6 * 3.6);
}
