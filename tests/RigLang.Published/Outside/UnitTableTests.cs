using RigLang.Quantities;

namespace RigLang.Published.Outside;

/// <summary>Our unit table against GNU units, unit by unit.</summary>
public sealed class UnitTableTests
{
    // Ours, theirs, and the SI unit that both are counted in.
    private static readonly (string Ours, string Theirs, string Si)[] Pairs =
    [
        ("%", "percent", "1"), ("mm", "mm", "m"), ("cm", "cm", "m"), ("km", "km", "m"), ("µm", "micron", "m"), ("in", "inch", "m"), ("ft", "foot", "m"), ("yd", "yard", "m"), ("mi", "mile", "m"),
        ("g", "gram", "kg"), ("t", "tonne", "kg"), ("lb", "pound", "kg"), ("oz", "ounce", "kg"), ("st", "stone", "kg"), ("short-ton", "shortton", "kg"), ("long-ton", "longton", "kg"),
        ("short-cwt", "shorthundredweight", "kg"), ("long-cwt", "longhundredweight", "kg"),
        ("daN", "10 N", "N"), ("kN", "kN", "N"), ("kgf", "kilogram force", "N"), ("lbf", "lbf", "N"),
        ("hPa", "hPa", "Pa"), ("kPa", "kPa", "Pa"), ("MPa", "MPa", "Pa"), ("bar", "bar", "Pa"), ("mbar", "mbar", "Pa"), ("psi", "psi", "Pa"),
        ("kW", "kW", "W"), ("MW", "MW", "W"), ("us-hp", "550 foot lbf/s", "W"), ("metric-hp", "metrichorsepower", "W"),
        ("kJ", "kJ", "J"), ("MJ", "MJ", "J"), ("Wh", "W hour", "J"), ("kWh", "kW hour", "J"), ("MWh", "MW hour", "J"), ("Btu", "btu_IT", "J"),
        ("mph", "mile/hour", "m/s"), ("kn", "knot", "m/s"), ("km/h", "km/hour", "m/s"),
        ("min", "minute", "s"), ("h", "hour", "s"), ("d", "day", "s"),
        ("°", "degree", "radian"), ("mrad", "milliradian", "radian"),
        ("L", "litre", "m^3"), ("mL", "ml", "m^3"), ("us-gal", "usgallon", "m^3"), ("imp-gal", "brgallon", "m^3"), ("us-qt", "usquart", "m^3"), ("imp-qt", "brquart", "m^3"),
        ("us-pt", "uspint", "m^3"), ("imp-pt", "brpint", "m^3"),
        ("rpm", "360 degree/minute", "radian/s"),
        // Composed ones, and those that are counted the other way round.
        ("us-mpg", "usgallon/mile", "m^2"), ("imp-mpg", "brgallon/mile", "m^2"), ("L/100km", "litre/(100 km)", "m^2"),
        ("N·m", "N m", "J"), ("lbf·ft", "lbf foot", "J"), ("N/mm", "N/mm", "N/m"), ("kN/m", "kN/m", "N/m"), ("lbf/in", "lbf/inch", "N/m"),
        ("lbf/mph", "lbf/(mile/hour)", "N/(m/s)"), ("lbf/mph²", "lbf/(mile/hour)^2", "N/(m/s)^2"),
        ("Wh/km", "W hour/km", "J/m"), ("Wh/mi", "W hour/mile", "J/m"), ("kg/m³", "kg/m^3", "kg/m^3"), ("ft²", "foot^2", "m^2"),
    ];

    [Asks(nameof(OutsideProgram.Units))]
    public void Every_unit_is_worth_what_GNU_units_says()
    {
        IReadOnlyList<double> theirs = OutsideProgram.Units.Numbers(string.Concat(Pairs.Select(pair => $"{pair.Theirs}\n{pair.Si}\n")));

        theirs.Should().HaveCount(Pairs.Length);
        foreach (var ((name, _, _), worth) in Pairs.Zip(theirs))
        {
            Unit unit = UnitTable.Find(name) ?? throw new InvalidOperationException($"'{name}' is no unit of ours.");
            unit.ToSi(1).Should().BeApproximately(worth, 1e-13 * worth, "{0} is so much in GNU units", name);
        }
    }

    [Asks(nameof(OutsideProgram.Units))]
    public void Every_unit_of_the_table_with_a_factor_of_its_own_is_among_them()
    {
        // 1 by definition, or (°/g, ‰, Hz, A, V and the Greek µ) made of others in the table.
        string[] apart = ["m", "kg", "N", "Pa", "W", "J", "s", "K", "rad", "A", "V", "Hz", "‰", "°/g", "°C", "°F"];
        UnitTable.Spellings.Select(spelling => UnitTable.Find(spelling)!.Symbol).Distinct().Except(Pairs.Select(pair => pair.Ours)).Except(apart).Should().BeEmpty();
    }

    [Asks(nameof(OutsideProgram.Units))]
    public void Degrees_are_the_same_temperatures()
    {
        double[] figures = [-40, -10, 0, 20, 37.5, 100];
        IReadOnlyList<double> theirs = OutsideProgram.Units.Numbers(
            string.Concat(figures.Select(figure => FormattableString.Invariant($"tempC({figure})\nK\ntempF({figure})\nK\n"))));

        for (int i = 0; i < figures.Length; i++)
        {
            Quantities.Units.Celsius.ToSi(figures[i]).Should().BeApproximately(theirs[2 * i], 1e-9);
            Quantities.Units.Fahrenheit.ToSi(figures[i]).Should().BeApproximately(theirs[(2 * i) + 1], 1e-9);
        }
    }
}
