using UnitsNet;
using UnitsNet.Units;

namespace RigLang.Quantities;

/// <summary>Units that the language does not have, by their English names ("furlong", "nautical-miles", "torr"): what a figure in one of them comes to in a unit that it has.
/// This is for a fix that somebody asked for, never for reading: the library behind it takes a good part of a second to wake up.</summary>
public static class ForeignUnits
{
    private const int Significant = 6;

    /// <summary>"0.5 nautical-mile" of a distance is "0.926 km"; null if no such unit of this kind is known or the number is none.</summary>
    /// <param name="number">As written.</param>
    /// <param name="unitName">Singular or plural, in any case, words joined by hyphens.</param>
    /// <param name="kind">What is wanted.</param>
    public static string? Convert(string number, string unitName, QuantityKind kind)
    {
        if (!NumberReader.TryRead(number, out var value, out _, out _) || unitName.Length > UnitComposer.MostLength || Library(kind) is not { } library)
            return null;
        var name = unitName.Replace("-", "");
        var unit = library.Info.UnitInfos.FirstOrDefault(info =>
            string.Equals(info.Name, name, StringComparison.OrdinalIgnoreCase) || string.Equals(info.PluralName, name, StringComparison.OrdinalIgnoreCase));
        if (unit is null || !UnitConverter.TryConvert((QuantityValue)value, unit.Value, library.Si, out var si) || !double.IsFinite(si))
            return null;
        var target = kind.Metric;
        var figure = target.FromSi(si);
        return QuantityWriter.Join(DecimalText.Round(figure, QuantityWriter.DecimalsFor(figure, Significant), trimmed: true), target.Symbol);
    }

    private static (QuantityInfo Info, Enum Si)? Library(QuantityKind kind) =>
        kind.Dimension == Dimension.Length ? (Length.Info, LengthUnit.Meter)
        : kind.Dimension == Dimension.Mass ? (Mass.Info, MassUnit.Kilogram)
        : kind == QuantityKinds.Force ? (Force.Info, ForceUnit.Newton)
        : kind == QuantityKinds.Pressure ? (Pressure.Info, PressureUnit.Pascal)
        : kind == QuantityKinds.Power ? (Power.Info, PowerUnit.Watt)
        : kind == QuantityKinds.Energy ? (Energy.Info, EnergyUnit.Joule)
        : kind == QuantityKinds.Torque ? (Torque.Info, TorqueUnit.NewtonMeter)
        : kind == QuantityKinds.Speed ? (Speed.Info, SpeedUnit.MeterPerSecond)
        : kind == QuantityKinds.Area ? (Area.Info, AreaUnit.SquareMeter)
        : kind == QuantityKinds.Volume ? (Volume.Info, VolumeUnit.CubicMeter)
        : kind == QuantityKinds.Density ? (Density.Info, DensityUnit.KilogramPerCubicMeter)
        : kind == QuantityKinds.SpringRate ? (ForcePerLength.Info, ForcePerLengthUnit.NewtonPerMeter)
        : kind == QuantityKinds.Time ? (Duration.Info, DurationUnit.Second)
        : null;
}
