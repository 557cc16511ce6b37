using System.Collections.Frozen;

namespace RigLang.Quantities;

/// <summary>Spellings that people use and the language does not: those with several meanings, which are refused with the choices, and other words for one unit.</summary>
internal static class UnitSpellings
{
    /// <summary>What a spelling with several meanings can stand for, keyed in lower case.</summary>
    private static readonly FrozenDictionary<string, string[]> Choices = new Dictionary<string, string[]>
    {
        ["ton"] = ["t", "short-ton", "long-ton"],
        ["tons"] = ["t", "short-ton", "long-ton"],
        ["gal"] = ["us-gal", "imp-gal"],
        ["gals"] = ["us-gal", "imp-gal"],
        ["gallon"] = ["us-gal", "imp-gal"],
        ["gallons"] = ["us-gal", "imp-gal"],
        ["qt"] = ["us-qt", "imp-qt"],
        ["pt"] = ["us-pt", "imp-pt"],
        ["mpg"] = ["us-mpg", "imp-mpg"],
        ["mi/gal"] = ["us-mpg", "imp-mpg"],
        ["hp"] = ["us-hp", "metric-hp"],
        ["dollar"] = ["USD", "AUD", "CAD", "NZD"],
        ["dollars"] = ["USD", "AUD", "CAD", "NZD"],
        ["cwt"] = ["short-cwt", "long-cwt"],
        ["lb·ft"] = ["lbf·ft"],
        ["ft·lb"] = ["lbf·ft"],
        ["lb·in"] = ["lbf·in"],
        ["in·lb"] = ["lbf·in"],
        ["$"] = ["USD", "AUD", "CAD", "NZD"],
        ["¥"] = ["JPY", "CNY"],
    }.ToFrozenDictionary();

    /// <summary>Other words for one unit, keyed in lower case.</summary>
    private static readonly FrozenDictionary<string, string> Words = Table(
        "m metre metres meter meters mtr mtrs", "km kilometre kilometres kilometer kilometers kms", "mm millimetre millimetres millimeter millimeters",
        "cm centimetre centimetres centimeter centimeters", "in inch inches \" ″ ''", "ft foot feet ' ′", "yd yard yards yds", "mi mile miles",
        "kg kilo kilos kilogram kilograms kilogramme kilogrammes kgs", "g gram grams gramme grammes", "t tonne tonnes metric-ton metric-tons",
        "lb lbs lbm pound pounds", "oz ounce ounces ozs", "st stone stones", "N newton newtons", "kN kilonewton kilonewtons", "kgf kp kilopond", "lbf pound-force",
        "Pa pascal pascals", "kPa kilopascal kilopascals", "bar bars barg", "psi psig lb/in² lbs/in²", "W watt watts", "kW kilowatt kilowatts",
        "metric-hp ps pk cv ch", "us-hp bhp", "kWh kw/h kilowatt-hour kilowatt-hours kwhr kwhrs", "km/h kph kmh kmph km/hr", "mph mi/h mi/hr",
        "m/s mps m/sec", "kn knot knots kt kts", "s sec secs second seconds", "min mins minute minutes", "h hr hrs hour hours", "d day days",
        "°C c celsius centigrade ºc", "°F f fahrenheit ºf", "K kelvin kelvins °k ºk degk", "° degree degrees degs º ˚", "rad radian radians",
        "L litre litres liter liters ltr ltrs", "mL mls millilitre millilitres milliliter milliliters", "cm³ cc ccm", "m² sqm sq-m qm", "ft² sqft sq-ft", "in² sqin sq-in", "ft³ cuft cu-ft", "in³ cuin cu-in", "kg·m² kgm2 kgm²", "m³ cbm",
        "rpm rev/min revs/min u/min 1/min r/min", "A amp amps ampere amperes", "V volt volts", "% percent per-cent pct", "‰ permille per-mille",
        "L/100km l/100 l/km100", "kWh/100km kwh/100", "us-mpg mpg-us mpgus", "imp-mpg mpg-uk uk-mpg mpg-imp",
        "us-gal usgal gal-us", "imp-gal uk-gal ukgal impgal", "N·m newton-metre newton-metres newton-meter newton-meters", "J joule joules", "EUR € euro euros", "GBP £");

    /// <summary>Units that are right elsewhere and stand for another where this kind is wanted: 45 m of time, 36 lb in a tyre, 14° outside.</summary>
    private static readonly (string Written, string Kind, string[] Meant)[] Loose =
    [
        ("m", "time", ["min"]),
        ("lb", "gauge pressure", ["psi"]),
        ("°", "temperature", ["°C", "°F"]),
        ("deg", "temperature", ["°C", "°F"]),
    ];

    public static string[]? LooseFor(string text, QuantityKind kind) =>
        Loose.FirstOrDefault(loose => loose.Written == text && loose.Kind == kind.Name).Meant;

    public static string[]? ChoicesFor(string text) => Choices.GetValueOrDefault(Canonical(text));

    /// <summary>The listed symbol for another word or sign; null if that is not known either.</summary>
    public static string? WordFor(string text) => Words.GetValueOrDefault(Canonical(text));

    /// <summary>lb·ft can be put together, but it is what everybody writes for lbf·ft.</summary>
    public static bool IsRefused(ReadOnlySpan<char> text) =>
        text.Length <= UnitComposer.MostLength && text.StartsWith("lb", StringComparison.Ordinal) | text.EndsWith("lb", StringComparison.Ordinal)
        && Choices.ContainsKey(Canonical(text.ToString()));

    /// <summary>Lower case, the dot for any sign between factors ("ft-lb", "ft.lb", "N*m"), powers raised, a plural pound made singular.</summary>
    private static string Canonical(string text)
    {
        var plain = text.ToLowerInvariant().Replace('*', '·').Replace('⋅', '·').Replace("^2", "²").Replace("^3", "³");
        if (plain.Replace('-', '·').Replace('.', '·').Replace("lbs", "lb") is "lb·ft" or "ft·lb" or "lb·in" or "in·lb" or "lbft" or "ftlb")
            return plain.StartsWith("in", StringComparison.Ordinal) ? "in·lb"
                : plain.StartsWith("lb", StringComparison.Ordinal) && plain.EndsWith("in", StringComparison.Ordinal) ? "lb·in"
                : "lb·ft";
        return plain;
    }

    private static FrozenDictionary<string, string> Table(params string[] rows)
    {
        var table = new Dictionary<string, string>();
        foreach (var row in rows)
        {
            var words = row.Split(' ');
            foreach (var word in words.AsSpan(1))
                table.TryAdd(word, words[0]);
        }

        return table.ToFrozenDictionary();
    }
}
