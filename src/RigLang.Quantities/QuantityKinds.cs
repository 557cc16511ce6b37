using static RigLang.Quantities.Units;

namespace RigLang.Quantities;

/// <summary>Every kind of quantity that a fact or a result can have.</summary>
public static class QuantityKinds
{
    private static readonly List<QuantityKind> Listed = [];

    public static readonly QuantityKind Length = Add(new("length", Dimension.Length, Metre, 2, Inches, 1, Metre, Millimetre, Centimetre, Inches, Foot));

    /// <summary>Of a ball, a shank, a tube: small and nominal.</summary>
    public static readonly QuantityKind Size = Add(new("size", Dimension.Length, Millimetre, 0, Inches, 2, Millimetre, Inches, Centimetre));

    /// <summary>Along the road.</summary>
    public static readonly QuantityKind Distance = Add(new("distance", Dimension.Length, Kilometre, 1, Mile, 1, Kilometre, Mile, Metre));

    /// <summary>To a standstill.</summary>
    public static readonly QuantityKind StopLength = Add(new("length of a stop", Dimension.Length, Metre, 1, Foot, 0, Metre, Foot));

    /// <summary>Climb, descent, altitude.</summary>
    public static readonly QuantityKind Height = Add(new("height", Dimension.Length, Metre, 0, Foot, 0, Metre, Foot));

    public static readonly QuantityKind Mass = Add(new("mass", Dimension.Mass, Kilogram, 0, Pounds, 0, Kilogram, Pounds, Tonne, ShortTon, LongTon, Ounce));

    public static readonly QuantityKind Force = Add(new("force", Dimension.Force, Kilonewton, 2, PoundForce, 0, Newton, Kilonewton, Decanewton, KilogramForce, PoundForce));

    public static readonly QuantityKind Ratio = Add(new("ratio", Dimension.None, Percent, 1, Percent, 1, Percent) { AllowsBare = true });

    public static readonly QuantityKind Number = Add(new("number", Dimension.None, One, 3, One, 3) { AllowsBare = true, BareOnly = true });

    public static readonly QuantityKind Count = Add(new("count", Dimension.None, One, 0, One, 0) { AllowsBare = true, BareOnly = true, IsCount = true });

    public static readonly QuantityKind Slope = Add(new("slope", Dimension.None, Percent, 1, Percent, 1, Percent, SlopeDegree, PerMille) { IsSlope = true });

    public static readonly QuantityKind Torque = Add(Made("torque", "N·m", 0, "lbf·ft", 0, UnitFamily.Torque, "N·m", "lbf·ft", "kN·m", "lbf·in", "kgf·m"));

    public static readonly QuantityKind Energy = Add(new("energy", Dimension.Energy, KilowattHour, 1, KilowattHour, 1, KilowattHour, WattHour, Megajoule, Kilojoule, Joule)
        { Family = UnitFamily.Energy });

    public static readonly QuantityKind Power = Add(new("power", Dimension.Power, Kilowatt, 1, UsHorsepower, 0, Kilowatt, Watt, UsHorsepower, MetricHorsepower, Megawatt));

    public static readonly QuantityKind Speed = Add(Made("speed", "km/h", 0, "mph", 0, UnitFamily.Plain, "km/h", "mph", "m/s", "kn"));

    public static readonly QuantityKind Pressure = Add(new("gauge pressure", Dimension.Pressure, Kilopascal, 0, Psi, 0, Kilopascal, Psi, Bar));

    public static readonly QuantityKind Temperature = Add(new("temperature", Dimension.Temperature, Celsius, 0, Fahrenheit, 0, Celsius, Fahrenheit, Kelvin)
        { IsTemperature = true });

    public static readonly QuantityKind TemperatureDifference = Add(new("temperature difference", Dimension.Temperature, Kelvin, 0, FahrenheitDifference, 0,
        Kelvin, CelsiusDifference, FahrenheitDifference) { IsTemperatureDifference = true });

    public static readonly QuantityKind Angle = Add(new("angle", Dimension.Angle, Degree, 1, Degree, 1, Degree, Radian, Milliradian));

    public static readonly QuantityKind Time = Add(new("time", Dimension.Time, Minute, 0, Minute, 0, Minute, Hour, Second, Day) { IsDuration = true });

    public static readonly QuantityKind Area = Add(Made("area", "m²", 2, "ft²", 1, UnitFamily.Plain, "m²", "ft²", "cm²", "in²"));

    public static readonly QuantityKind Volume = Add(new("volume", Dimension.Volume, Litre, 1, UsGallons, 1, Litre, UsGallons, ImperialGallons, Unit("m³")));

    public static readonly QuantityKind Current = Add(new("current", Dimension.Current, Ampere, 0, Ampere, 0, Ampere));

    public static readonly QuantityKind Voltage = Add(new("voltage", Dimension.Power / Dimension.Current, Volt, 0, Volt, 0, Volt));

    public static readonly QuantityKind Rotation = Add(new("rotation", Dimension.Angle / Dimension.Time, Rpm, 0, Rpm, 0, Rpm, Unit("rad/s")));

    public static readonly QuantityKind YawInertia = Add(Made("moment of inertia", "kg·m²", 0, "lb·ft²", 0, UnitFamily.Plain, "kg·m²", "lb·ft²"));

    public static readonly QuantityKind SpringRate = Add(Made("spring rate", "N/mm", 1, "lbf/in", 0, UnitFamily.Plain, "N/mm", "lbf/in", "kN/m", "kgf/mm"));

    public static readonly QuantityKind CorneringStiffness =
        Add(Made("cornering stiffness", "kN/rad", 1, "lbf/°", 0, UnitFamily.Plain, "kN/rad", "N/°", "N/rad", "lbf/°"));

    public static readonly QuantityKind YawDamping =
        Add(Made("yaw damping", "N·m·s/rad", 0, "lbf·ft·s/rad", 0, UnitFamily.Plain, "N·m·s/rad", "lbf·ft·s/rad", "N·m·s/°"));

    public static readonly QuantityKind ForcePerSpeed =
        Add(Made("force per speed", "N·s/m", 2, "lbf/mph", 4, UnitFamily.Plain, "N·s/m", "N·h/km", "lbf/mph"));

    public static readonly QuantityKind ForcePerSpeedSquared =
        Add(Made("force per speed squared", "N·s²/m²", 4, "lbf/mph²", 5, UnitFamily.Plain, "N·s²/m²", "N·h²/km²", "lbf/mph²"));

    public static readonly QuantityKind FuelPerDistance =
        Add(Made("fuel per distance", "L/100km", 1, "us-mpg", 1, UnitFamily.FuelPerDistance, "L/100km", "us-mpg", "imp-mpg", "km/L"));

    public static readonly QuantityKind EnergyPerDistance =
        Add(Made("energy per distance", "kWh/100km", 1, "kWh/100mi", 1, UnitFamily.EnergyPerDistance, "kWh/100km", "Wh/km", "kWh/100mi", "Wh/mi", "mi/kWh"));

    public static readonly QuantityKind Money = Add(Made("money", "XXX", 2, "XXX", 2, UnitFamily.Plain, "EUR", "USD", "GBP", "AUD", "CAD"));

    public static readonly QuantityKind MoneyPerEnergy =
        Add(Made("price of energy", "XXX/kWh", 2, "XXX/kWh", 2, UnitFamily.Plain, "EUR/kWh", "USD/kWh", "GBP/kWh", "AUD/kWh", "CAD/kWh"));

    public static readonly QuantityKind MoneyPerVolume =
        Add(Made("price of fuel", "XXX/L", 2, "XXX/us-gal", 2, UnitFamily.Plain, "EUR/L", "USD/us-gal", "GBP/L", "AUD/L", "CAD/L"));

    public static readonly QuantityKind Acceleration = Add(Made("acceleration", "m/s²", 2, "ft/s²", 1, UnitFamily.Plain, "m/s²", "ft/s²"));

    public static readonly QuantityKind Understeer =
        Add(new("understeer", Dimension.Angle / Dimension.Acceleration, DegreePerGravity, 2, DegreePerGravity, 2, DegreePerGravity));

    public static readonly QuantityKind Density = Add(Made("density", "kg/L", 3, "lb/us-gal", 2, UnitFamily.Plain, "kg/L", "kg/m³", "lb/us-gal", "lb/ft³"));

    public static IReadOnlyList<QuantityKind> All => Listed;

    private static QuantityKind Add(QuantityKind kind)
    {
        Listed.Add(kind);
        return kind;
    }

    private static QuantityKind Made(
        string name, string metric, int metricDecimals, string us, int usDecimals, UnitFamily family, params string[] examples) =>
        new(name, Unit(metric).Dimension, Unit(metric), metricDecimals, Unit(us), usDecimals, [.. examples.Select(Unit)]) { Family = family };

    // A misspelt unit in this file is a mistake of this file: the class fails to load and every test with it.
    private static Unit Unit(string symbol) => UnitTable.Find(symbol) ?? throw new InvalidOperationException("no unit is spelt " + symbol);
}
