namespace RigLang.Quantities.Tests;

public class ForeignUnitsTests
{
    // 1 nautical mile = 1852 m (International Hydrographic Conference 1929); 1 torr = 101 325/760 Pa.
    [Theory]
    [InlineData("0.5", "nautical-mile", "distance", "0.926 km")]
    [InlineData("2", "NauticalMiles", "distance", "3.704 km")]
    [InlineData("760", "torr", "gauge pressure", "101.325 kPa")]
    [InlineData("2", "fathoms", "length", "3.6576 m")]
    public void A_figure_in_a_unit_of_elsewhere_is_converted(string number, string unit, string kind, string expected) =>
        ForeignUnits.Convert(number, unit, QuantityKinds.All.Single(k => k.Name == kind)).Should().Be(expected);

    [Theory]
    [InlineData("two", "fathoms")]
    [InlineData("2", "torr")]
    [InlineData("2", "")]
    public void What_is_not_known_is_not_converted(string number, string unit) =>
        ForeignUnits.Convert(number, unit, QuantityKinds.Length).Should().BeNull();

    [Fact]
    public void No_kind_makes_it_throw()
    {
        foreach (var kind in QuantityKinds.All)
            ForeignUnits.Convert("1e999", "no-such-unit", kind).Should().BeNull();
    }
}
