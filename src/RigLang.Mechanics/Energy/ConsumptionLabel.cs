using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// What the figures on US consumption labels mean. Miles per gallon in mi/gal (US), energies over distance in J/m.
/// </summary>
public static class ConsumptionLabel
{
    private const double Mile = 1609.344, KilowattHour = 3.6e6;

    /// <summary>Energy of a gallon-equivalent, J: 33.705 kWh.</summary>
    public const double GallonEquivalent = 33.705 * KilowattHour;

    /// <summary>Wall energy over distance, J/m, of a miles-per-gallon-equivalent figure.</summary>
    public static double FromEquivalent(double milesPerGallonEquivalent) => Finite(GallonEquivalent / (Positive(milesPerGallonEquivalent) * Mile));

    /// <summary>City label from the unadjusted city test, by the derived five-cycle formula of 40 CFR 600.210-12.</summary>
    public static double City(double test) => Finite(1 / (0.004091 + (1.1601 / Positive(test))));

    /// <summary>Highway label from the unadjusted highway test, by the same section.</summary>
    public static double Highway(double test) => Finite(1 / (0.003191 + (1.2945 / Positive(test))));

    /// <summary>Combined consumption: 0.55 city and 0.45 highway, any unit of energy over distance. Source: 10 CFR 474.3.</summary>
    public static double Combined(double city, double highway) => Finite((0.55 * city) + (0.45 * highway));

    /// <summary>What battery vehicles' tests are divided by for the label (default; 0.75 is also used; 40 CFR 600.210, value from memory).</summary>
    public const double BatteryAdjustment = 0.7;

    /// <summary>
    /// Petroleum-equivalency factor, Wh a gallon, by which fleet rules turn a battery vehicle's combined consumption into miles per gallon; nothing that a
    /// driver uses. Source: 10 CFR 474.3.
    /// </summary>
    /// <param name="modelYear">Up to 2026 one value, then falling; from 2030 on the last.</param>
    /// <param name="petroleumAccessories">Accessories that burn petroleum, such as a heater: a tenth less.</param>
    public static double PetroleumEquivalency(int modelYear, bool petroleumAccessories) => (petroleumAccessories ? 0.9 : 1) * modelYear switch
    {
        <= 2026 => 82_049,
        2027 => 79_989,
        2028 => 50_427,
        2029 => 36_820,
        _ => 28_996,
    };
}
