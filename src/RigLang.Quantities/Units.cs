namespace RigLang.Quantities;

/// <summary>The simple units of the language, each with its spellings and SI factor. Factors are definitions (exact) or exact products of them;
/// a test holds every one against an independent library.</summary>
public static class Units
{
    private static readonly List<Unit> Listed = [];
    private static readonly List<(string Spelling, Unit Unit)> Written = [];

    private const double Pound = 0.45359237;
    private const double StandardGravity = 9.80665;
    private const double Inch = 0.0254;
    private const double UsGallon = 231 * Inch * Inch * Inch;
    private const double ImperialGallon = 4.54609e-3;
    private const double FootPound = 12 * Inch * Pound * StandardGravity;

    /// <summary>The unit of a bare number.</summary>
    public static readonly Unit One = new("", "bare number", Dimension.None, 1);

    public static readonly Unit Percent = Add("%", "per cent", Dimension.None, 0.01);
    public static readonly Unit PerMille = Add("‰", "per mille", Dimension.None, 0.001);

    public static readonly Unit Metre = Add("m", "metre", Dimension.Length, 1);
    public static readonly Unit Millimetre = Add("mm", "millimetre", Dimension.Length, 0.001);
    public static readonly Unit Centimetre = Add("cm", "centimetre", Dimension.Length, 0.01);
    public static readonly Unit Kilometre = Add("km", "kilometre", Dimension.Length, 1000);

    /// <summary>U+00B5, the micro sign, and U+03BC, the Greek letter, are the same to every reader.</summary>
    public static readonly Unit Micrometre = Add("µm", "micrometre", Dimension.Length, 1e-6, spellings: ["μm"]);

    public static readonly Unit Inches = Customary("in", "inch", Dimension.Length, Inch);
    public static readonly Unit Foot = Customary("ft", "foot", Dimension.Length, 12 * Inch);
    public static readonly Unit Yard = Customary("yd", "yard", Dimension.Length, 36 * Inch);
    public static readonly Unit Mile = Customary("mi", "mile", Dimension.Length, 63360 * Inch);

    public static readonly Unit Kilogram = Add("kg", "kilogram", Dimension.Mass, 1);
    public static readonly Unit Gram = Add("g", "gram", Dimension.Mass, 0.001);
    public static readonly Unit Tonne = Add("t", "tonne", Dimension.Mass, 1000);
    public static readonly Unit Pounds = Customary("lb", "pound (mass)", Dimension.Mass, Pound);
    public static readonly Unit Ounce = Customary("oz", "ounce (mass)", Dimension.Mass, Pound / 16);
    public static readonly Unit Stone = Customary("st", "stone, 14 lb", Dimension.Mass, 14 * Pound);
    public static readonly Unit ShortTon = Customary("short-ton", "short ton, 2000 lb", Dimension.Mass, 2000 * Pound);
    public static readonly Unit LongTon = Customary("long-ton", "long ton, 2240 lb", Dimension.Mass, 2240 * Pound);
    public static readonly Unit ShortHundredweight = Customary("short-cwt", "short hundredweight, 100 lb", Dimension.Mass, 100 * Pound);
    public static readonly Unit LongHundredweight = Customary("long-cwt", "long hundredweight, 112 lb", Dimension.Mass, 112 * Pound);

    public static readonly Unit Newton = Add("N", "newton", Dimension.Force, 1);
    public static readonly Unit Decanewton = Add("daN", "decanewton", Dimension.Force, 10);
    public static readonly Unit Kilonewton = Add("kN", "kilonewton", Dimension.Force, 1000);
    public static readonly Unit KilogramForce = Add("kgf", "kilogram-force", Dimension.Force, StandardGravity);
    public static readonly Unit PoundForce = Customary("lbf", "pound-force", Dimension.Force, Pound * StandardGravity);

    public static readonly Unit Pascal = Add("Pa", "pascal", Dimension.Pressure, 1);
    public static readonly Unit Hectopascal = Add("hPa", "hectopascal", Dimension.Pressure, 100);
    public static readonly Unit Kilopascal = Add("kPa", "kilopascal", Dimension.Pressure, 1000);
    public static readonly Unit Megapascal = Add("MPa", "megapascal", Dimension.Pressure, 1e6);
    public static readonly Unit Bar = Add("bar", "bar", Dimension.Pressure, 1e5);
    public static readonly Unit Millibar = Add("mbar", "millibar", Dimension.Pressure, 100);
    public static readonly Unit Psi = Customary("psi", "pound-force per square inch", Dimension.Pressure, Pound * StandardGravity / (Inch * Inch));

    public static readonly Unit Watt = Add("W", "watt", Dimension.Power, 1);
    public static readonly Unit Kilowatt = Add("kW", "kilowatt", Dimension.Power, 1000);
    public static readonly Unit Megawatt = Add("MW", "megawatt", Dimension.Power, 1e6);
    public static readonly Unit UsHorsepower = Customary("us-hp", "mechanical horsepower, 550 ft·lbf/s", Dimension.Power, 550 * FootPound);
    public static readonly Unit MetricHorsepower = Add("metric-hp", "metric horsepower, 75 kgf·m/s", Dimension.Power, 75 * StandardGravity);

    public static readonly Unit Joule = Add("J", "joule", Dimension.Energy, 1, UnitFamily.Energy);
    public static readonly Unit Kilojoule = Add("kJ", "kilojoule", Dimension.Energy, 1000, UnitFamily.Energy);
    public static readonly Unit Megajoule = Add("MJ", "megajoule", Dimension.Energy, 1e6, UnitFamily.Energy);
    public static readonly Unit WattHour = Add("Wh", "watt hour", Dimension.Energy, 3600, UnitFamily.Energy);
    public static readonly Unit KilowattHour = Add("kWh", "kilowatt hour", Dimension.Energy, 3.6e6, UnitFamily.Energy);
    public static readonly Unit MegawattHour = Add("MWh", "megawatt hour", Dimension.Energy, 3.6e9, UnitFamily.Energy);
    public static readonly Unit Btu = Customary("Btu", "British thermal unit (international table)", Dimension.Energy, 1055.05585262, UnitFamily.Energy);

    public static readonly Unit MilePerHour = Customary("mph", "mile per hour", Dimension.Speed, 63360 * Inch / 3600);
    public static readonly Unit Knot = Add("kn", "knot", Dimension.Speed, 1852.0 / 3600);

    public static readonly Unit Second = Add("s", "second", Dimension.Time, 1);
    public static readonly Unit Minute = Add("min", "minute", Dimension.Time, 60);
    public static readonly Unit Hour = Add("h", "hour", Dimension.Time, 3600);
    public static readonly Unit Day = Add("d", "day of 24 h", Dimension.Time, 86400);

    public static readonly Unit Kelvin = Add("K", "kelvin", Dimension.Temperature, 1);
    public static readonly Unit Celsius = Scale("°C", "degree Celsius", 1, 273.15, "degC", "℃");
    public static readonly Unit Fahrenheit = Scale("°F", "degree Fahrenheit", 5.0 / 9, 459.67 * 5 / 9, "degF", "℉");

    public static readonly Unit Degree = Add("°", "degree of angle", Dimension.Angle, Math.PI / 180, spellings: ["deg"]);
    public static readonly Unit Radian = Add("rad", "radian", Dimension.Angle, 1);
    public static readonly Unit Milliradian = Add("mrad", "milliradian", Dimension.Angle, 0.001);

    /// <summary>Of steer for each g of sideways acceleration: how the trade tells understeer. Taken whole, since g by itself is the gram.</summary>
    public static readonly Unit DegreePerGravity =
        Add("°/g", "degree for each g", Dimension.Angle / Dimension.Acceleration, Math.PI / 180 / StandardGravity, spellings: ["deg/g"]);

    public static readonly Unit Litre = Add("L", "litre", Dimension.Volume, 0.001, spellings: ["l"]);
    public static readonly Unit Millilitre = Add("mL", "millilitre", Dimension.Volume, 1e-6, spellings: ["ml"]);
    public static readonly Unit UsGallons = Customary("us-gal", "US gallon", Dimension.Volume, UsGallon);
    public static readonly Unit ImperialGallons = Customary("imp-gal", "imperial gallon", Dimension.Volume, ImperialGallon);
    public static readonly Unit UsQuart = Customary("us-qt", "US quart", Dimension.Volume, UsGallon / 4);
    public static readonly Unit ImperialQuart = Customary("imp-qt", "imperial quart", Dimension.Volume, ImperialGallon / 4);
    public static readonly Unit UsPint = Customary("us-pt", "US pint", Dimension.Volume, UsGallon / 8);
    public static readonly Unit ImperialPint = Customary("imp-pt", "imperial pint", Dimension.Volume, ImperialGallon / 8);

    public static readonly Unit Rpm = Add("rpm", "revolution per minute", Dimension.Angle / Dimension.Time, 2 * Math.PI / 60);
    public static readonly Unit Hertz = Add("Hz", "hertz", Dimension.Time.Pow(-1), 1);
    public static readonly Unit Ampere = Add("A", "ampere", Dimension.Current, 1);
    public static readonly Unit Volt = Add("V", "volt", Dimension.Power / Dimension.Current, 1);

    public static readonly Unit UsMpg = Reciprocal("us-mpg", "mile per US gallon", UsGallon / (63360 * Inch));
    public static readonly Unit ImperialMpg = Reciprocal("imp-mpg", "mile per imperial gallon", ImperialGallon / (63360 * Inch));

    /// <summary>A slope written as an angle. It shares its symbol with the angle; the kind wanted tells them apart.</summary>
    public static readonly Unit SlopeDegree = new("°", "degree of slope", Dimension.None, Math.PI / 180) { IsTangent = true };

    /// <summary>A slope written 1:n. It has no symbol of its own: the number is the whole of it.</summary>
    public static readonly Unit SlopeOneIn = new("1:n", "rise to run, 1:n", Dimension.None, 1) { IsReciprocal = true };

    /// <summary>Differences of temperature: the same symbols, no offset.</summary>
    public static readonly Unit CelsiusDifference = new("°C", "Celsius degree of difference", Dimension.Temperature, 1);

    public static readonly Unit FahrenheitDifference = new("°F", "Fahrenheit degree of difference", Dimension.Temperature, 5.0 / 9) { IsCustomary = true };

    /// <summary>Every simple unit that can be written, in the order of this file; currencies are in <see cref="Currencies"/>.</summary>
    public static IReadOnlyList<Unit> All => Listed;

    /// <summary>Every spelling that is read, with its unit; the listed symbol first.</summary>
    internal static IReadOnlyList<(string Spelling, Unit Unit)> Spellings => Written;

    private static Unit Add(
        string symbol, string name, Dimension dimension, double factor, UnitFamily family = UnitFamily.Plain, string[]? spellings = null) =>
        Note(new Unit(symbol, name, dimension, factor, family), spellings);

    private static Unit Customary(string symbol, string name, Dimension dimension, double factor, UnitFamily family = UnitFamily.Plain) =>
        Note(new Unit(symbol, name, dimension, factor, family) { IsCustomary = true }, null);

    private static Unit Scale(string symbol, string name, double factor, double offset, params string[] spellings) =>
        Note(new Unit(symbol, name, Dimension.Temperature, factor) { Offset = offset, IsCustomary = symbol == "°F" }, spellings);

    private static Unit Reciprocal(string symbol, string name, double factor) =>
        Note(new Unit(symbol, name, Dimension.Area, factor, UnitFamily.FuelPerDistance) { IsReciprocal = true, IsCustomary = true }, null);

    private static Unit Note(Unit unit, string[]? spellings)
    {
        Listed.Add(unit);
        Written.Add((unit.Symbol, unit));
        foreach (var spelling in spellings ?? [])
            Written.Add((spelling, unit));
        return unit;
    }
}
