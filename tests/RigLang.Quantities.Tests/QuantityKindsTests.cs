namespace RigLang.Quantities.Tests;

public class QuantityKindsTests
{
    public static TheoryData<string> Names => [.. QuantityKinds.All.Select(kind => kind.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_kind_accepts_what_it_offers_and_shows(string name)
    {
        var kind = QuantityKinds.All.Single(k => k.Name == name);

        kind.ExampleUnits.Should().NotContain(unit => !kind.Accepts(unit));
        kind.Accepts(kind.Metric).Should().Be(kind.Metric != Units.One || kind.AllowsBare);
        kind.Accepts(kind.Us).Should().BeTrue();
        foreach (var unit in kind.ExampleUnits)
        {
            UnitTable.TryRead(unit.Symbol, kind, out var read, out _).Should().BeTrue();
            read.Should().BeSameAs(unit);
        }
    }

    [Fact]
    public void Every_kind_is_listed_once() =>
        QuantityKinds.All.Should().OnlyHaveUniqueItems(kind => kind.Name).And.HaveCount(
            typeof(QuantityKinds).GetFields().Count(field => field.FieldType == typeof(QuantityKind)));

    [Theory]
    [InlineData("N·m/rad", "kg·m²/rad/s²")]
    [InlineData("%", "1")]
    [InlineData("AUD/kWh", "money·s²/kg/m²")]
    public void A_dimension_is_told_in_base_units(string unit, string expected)
    {
        var parts = UnitTable.Find(unit)!.Dimension.ToString();

        parts.Split('·', '/').Should().BeEquivalentTo(expected.Split('·', '/'));
    }

    [Fact]
    public void Dimensions_multiply_and_never_wrap_round()
    {
        (Dimension.Force * Dimension.Length).Should().Be(Dimension.Energy);
        (Dimension.Length / Dimension.Length).IsNone.Should().BeTrue();
        Dimension.Length.Pow(int.MaxValue).Pow(3).Should().Be(Dimension.Length.Pow(100));
    }
}
