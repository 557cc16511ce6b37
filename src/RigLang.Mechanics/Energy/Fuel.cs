namespace RigLang.Mechanics;

/// <summary>A fuel. Its lower heating values and what it leaves behind.</summary>
/// <param name="HeatingValue">J/kg. Source: defaults of the EU Joint Research Centre for Regulation (EU) 2017/1151; E85 follows from its volume.</param>
/// <param name="VolumeHeatingValue">J/m³; NaN for a gas sold by mass. Source: petrol from AFDC/TEDB, the others from the gallon-equivalent table of
/// energy.ca.gov.</param>
/// <param name="Density">kg/m³ (common practice); NaN for a gas sold by mass.</param>
/// <param name="CarbonDioxide">kg CO2 per m³ burnt; NaN where none is known. Source: 40 CFR 600, 8887 and 10180 g/gal.</param>
public sealed record Fuel(double HeatingValue, double VolumeHeatingValue, double Density, double CarbonDioxide)
{
    private const double WattHour = 3600, Litre = 1e-3, Gallon = 3.785411784e-3;

    public static Fuel Petrol { get; } = new(43.2e6, 8988 * WattHour / Litre, 745, 8.887 / Gallon);

    public static Fuel Diesel { get; } = new(43.1e6, 9871 * WattHour / Litre, 835, 10.180 / Gallon);

    public static Fuel LiquefiedGas { get; } = new(46.0e6, 6441 * WattHour / Litre, 510, double.NaN);

    public static Fuel E85 { get; } = new(6325 * WattHour / Litre / 781, 6325 * WattHour / Litre, 781, double.NaN);

    /// <summary>Compressed natural gas, sold by mass.</summary>
    public static Fuel NaturalGas { get; } = new(45.1e6, double.NaN, double.NaN, double.NaN);
}
