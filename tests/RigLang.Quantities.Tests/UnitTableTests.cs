namespace RigLang.Quantities.Tests;

public class UnitTableTests
{
    private static QuantityKind Kind(string name) => QuantityKinds.All.Single(kind => kind.Name == name);

    [Theory]
    [InlineData("m2", "m²", "area")]
    [InlineData("m^2", "m²", "area")]
    [InlineData("ft^2", "ft²", "area")]
    [InlineData("cm3", "cm³", "volume")]
    [InlineData("deg", "°", "angle")]
    [InlineData("degC", "°C", "temperature")]
    [InlineData("Nm", "N·m", "torque")]
    [InlineData("N*m", "N·m", "torque")]
    [InlineData("N⋅m", "N·m", "torque")]
    [InlineData("lbf*ft", "lbf·ft", "torque")]
    [InlineData("kg*m2", "kg·m²", "moment of inertia")]
    [InlineData("lbf/mph²", "lbf/mph²", "force per speed squared")]
    [InlineData("lbf/mph^2", "lbf/mph²", "force per speed squared")]
    [InlineData("lbf/mph", "lbf/mph", "force per speed")]
    [InlineData("N·m·s/rad", "N·m·s/rad", "yaw damping")]
    [InlineData("N*m*s/deg", "N·m·s/°", "yaw damping")]
    [InlineData("kN/rad", "kN/rad", "cornering stiffness")]
    [InlineData("AUD/kWh", "AUD/kWh", "price of energy")]
    [InlineData("EUR/L", "EUR/L", "price of fuel")]
    [InlineData("EUR/l", "EUR/L", "price of fuel")]
    [InlineData("USD/us-gal", "USD/us-gal", "price of fuel")]
    [InlineData("L/100km", "L/100km", "fuel per distance")]
    [InlineData("us-gal/100mi", "us-gal/100mi", "fuel per distance")]
    [InlineData("km/L", "km/L", "fuel per distance")]
    [InlineData("imp-mpg", "imp-mpg", "fuel per distance")]
    [InlineData("kWh/100km", "kWh/100km", "energy per distance")]
    [InlineData("Wh/km", "Wh/km", "energy per distance")]
    [InlineData("mi/kWh", "mi/kWh", "energy per distance")]
    [InlineData("N/mm", "N/mm", "spring rate")]
    [InlineData("kW*h", "kW·h", "energy")]
    [InlineData("kg*m2/s2", "", "torque")]
    [InlineData("l", "L", "volume")]
    [InlineData("rad/s", "rad/s", "rotation")]
    [InlineData("m/km", "m/km", "slope")]
    public void A_unit_is_read_in_any_of_its_spellings(string text, string symbol, string kind)
    {
        var read = UnitTable.TryRead(text, Kind(kind), out var unit, out var problem);

        if (symbol.Length == 0)
        {
            // Behind a stroke nobody can say what is below the line.
            read.Should().BeTrue();
            unit!.Symbol.Should().Be("kg·m²/s²");
            return;
        }

        problem.Should().BeNull();
        read.Should().BeTrue();
        unit!.Symbol.Should().Be(symbol);
    }

    [Theory]
    [InlineData("ton", "mass", UnitProblemKind.Ambiguous, "t,short-ton,long-ton")]
    [InlineData("tons", "mass", UnitProblemKind.Ambiguous, "t,short-ton,long-ton")]
    [InlineData("cwt", "mass", UnitProblemKind.Ambiguous, "short-cwt,long-cwt")]
    [InlineData("gal", "volume", UnitProblemKind.Ambiguous, "us-gal,imp-gal")]
    [InlineData("mpg", "fuel per distance", UnitProblemKind.Ambiguous, "us-mpg,imp-mpg")]
    [InlineData("hp", "power", UnitProblemKind.Ambiguous, "us-hp,metric-hp")]
    [InlineData("HP", "power", UnitProblemKind.Ambiguous, "us-hp,metric-hp")]
    [InlineData("lb·ft", "torque", UnitProblemKind.Ambiguous, "lbf·ft")]
    [InlineData("lb*ft", "torque", UnitProblemKind.Ambiguous, "lbf·ft")]
    [InlineData("ft-lb", "torque", UnitProblemKind.Ambiguous, "lbf·ft")]
    [InlineData("ft-lbs", "torque", UnitProblemKind.Ambiguous, "lbf·ft")]
    [InlineData("USD/gal", "price of fuel", UnitProblemKind.Ambiguous, "USD/us-gal,USD/imp-gal")]
    [InlineData("$/kWh", "price of energy", UnitProblemKind.Ambiguous, "USD/kWh,AUD/kWh,CAD/kWh,NZD/kWh")]
    [InlineData("€/kWh", "price of energy", UnitProblemKind.OtherSpelling, "EUR/kWh")]
    [InlineData("KM", "distance", UnitProblemKind.CaseSlip, "km")]
    [InlineData("KW", "power", UnitProblemKind.CaseSlip, "kW")]
    [InlineData("kwh", "energy", UnitProblemKind.CaseSlip, "kWh")]
    [InlineData("KN", "force", UnitProblemKind.CaseSlip, "kN")]
    [InlineData("KN", "speed", UnitProblemKind.CaseSlip, "kn")]
    [InlineData("MPH", "speed", UnitProblemKind.CaseSlip, "mph")]
    [InlineData("Km/H", "speed", UnitProblemKind.CaseSlip, "km/h")]
    [InlineData("nM", "torque", UnitProblemKind.Unknown, "")]
    [InlineData("Kg*m2", "moment of inertia", UnitProblemKind.CaseSlip, "kg·m²")]
    [InlineData("kph", "speed", UnitProblemKind.OtherSpelling, "km/h")]
    [InlineData("kmh", "speed", UnitProblemKind.OtherSpelling, "km/h")]
    [InlineData("lbs", "mass", UnitProblemKind.OtherSpelling, "lb")]
    [InlineData("inches", "length", UnitProblemKind.OtherSpelling, "in")]
    [InlineData("'", "length", UnitProblemKind.OtherSpelling, "ft")]
    [InlineData("C", "temperature", UnitProblemKind.OtherSpelling, "°C")]
    [InlineData("ºC", "temperature", UnitProblemKind.OtherSpelling, "°C")]
    [InlineData("PS", "power", UnitProblemKind.OtherSpelling, "metric-hp")]
    [InlineData("km/hr", "speed", UnitProblemKind.OtherSpelling, "km/h")]
    [InlineData("usgal", "volume", UnitProblemKind.OtherSpelling, "us-gal")]
    [InlineData("mmm", "length", UnitProblemKind.Unknown, "mm")]
    [InlineData("kg", "force", UnitProblemKind.MassForForce, "kN,N,daN,kgf")]
    [InlineData("lb", "force", UnitProblemKind.MassForForce, "lbf")]
    [InlineData("kN", "mass", UnitProblemKind.ForceForMass, "kg,t")]
    [InlineData("lbf", "mass", UnitProblemKind.ForceForMass, "lb,short-ton,long-ton,oz")]
    [InlineData("kg/mm", "spring rate", UnitProblemKind.MassForForce, "kgf/mm")]
    [InlineData("lb/in", "spring rate", UnitProblemKind.MassForForce, "lbf/in")]
    [InlineData("kWh", "torque", UnitProblemKind.WrongDimension, "N·m,lbf·ft,kN·m,lbf·in,kgf·m")]
    [InlineData("N·m", "energy", UnitProblemKind.WrongDimension, "kWh,Wh,MJ,kJ,J")]
    [InlineData("Wh/km", "force", UnitProblemKind.WrongDimension, "N,kN,daN,kgf,lbf")]
    [InlineData("N", "energy per distance", UnitProblemKind.WrongDimension, "kWh/100km,Wh/km,kWh/100mi,Wh/mi,mi/kWh")]
    [InlineData("m²", "fuel per distance", UnitProblemKind.WrongDimension, "L/100km,us-mpg,imp-mpg,km/L")]
    [InlineData("kg", "length", UnitProblemKind.WrongDimension, "m,mm,cm,in,ft")]
    [InlineData("%", "count", UnitProblemKind.NotWanted, "")]
    [InlineData("kg", "number", UnitProblemKind.NotWanted, "")]
    [InlineData("", "length", UnitProblemKind.Missing, "m,mm,cm,in,ft")]
    [InlineData("kg/m·s", "gauge pressure", UnitProblemKind.Unknown, "kPa,psi,bar")]
    public void A_unit_that_cannot_be_taken_is_refused_with_what_to_write(string text, string kind, UnitProblemKind expected, string suggestions)
    {
        UnitTable.TryRead(text, Kind(kind), out var unit, out var problem).Should().BeFalse();

        unit.Should().BeNull();
        problem!.Kind.Should().Be(expected);
        if (suggestions.Length > 0)
            string.Join(',', problem.Suggestions).Should().Be(suggestions);
        problem.Message.Should().NotBeEmpty();
        problem.Suggestions.Where(suggestion => !UnitTable.TryRead(suggestion, Kind(kind), out var _, out var _)).Should().BeEmpty();
    }

    [Theory]
    [InlineData("ton")]
    [InlineData("lb·ft")]
    [InlineData("ft*lb")]
    [InlineData("hp")]
    public void A_spelling_with_several_meanings_is_refused_where_any_unit_would_do(string text)
    {
        UnitTable.TryRead(text, null, out _, out var problem).Should().BeFalse();
        problem!.Kind.Should().Be(UnitProblemKind.Ambiguous);
    }

    [Fact]
    public void A_composed_unit_read_twice_is_one_object()
    {
        UnitTable.TryRead("N*m", null, out var first, out _);
        UnitTable.TryRead("Nm", null, out var second, out _);

        second.Should().BeSameAs(first);
    }

    [Fact]
    public void Reading_a_known_unit_again_allocates_nothing()
    {
        UnitTable.TryRead("lbf/mph²", QuantityKinds.ForcePerSpeedSquared, out _, out _);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var round = 0; round < 100; round++)
            UnitTable.TryRead("lbf/mph²", QuantityKinds.ForcePerSpeedSquared, out _, out _);

        (GC.GetAllocatedBytesForCurrentThread() - before).Should().BeLessThan(100);
    }

    [Fact]
    public void No_unit_is_spelt_like_a_joining_word() =>
        "at behind ahead of high left right on from for within speed because like least most x".Split(' ')
            .Should().OnlyContain(word => UnitTable.Find(word) == null);

    [Fact]
    public void No_currency_is_spelt_like_a_unit() =>
        Currencies.Codes.Should().NotIntersectWith(UnitTable.Spellings).And.OnlyHaveUniqueItems().And.OnlyContain(code => code.Length == 3);

    [Theory]
    [InlineData("EUR", 2)]
    [InlineData("JPY", 0)]
    [InlineData("KWD", 3)]
    [InlineData("CLF", 4)]
    public void A_currency_has_its_minor_digits(string code, int digits) => Currencies.MinorDigits(code).Should().Be(digits);
}
