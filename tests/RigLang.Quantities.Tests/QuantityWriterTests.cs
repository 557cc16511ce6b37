namespace RigLang.Quantities.Tests;

public class QuantityWriterTests
{
    private static QuantityKind Kind(string name) => QuantityKinds.All.Single(kind => kind.Name == name);

    [Theory]
    [InlineData(1195.4, "mass", "1195 kg", "2635 lb")]
    [InlineData(0.4, "mass", "0.4 kg", "0.88 lb")]
    [InlineData(9, "mass", "9 kg", "20 lb")]
    [InlineData(1e-12, "mass", "0 kg", "0 lb")]
    [InlineData(-1e-12, "mass", "0 kg", "0 lb")]
    [InlineData(2.94, "length", "2.94 m", "115.7 in")]
    [InlineData(0.050, "size", "50 mm", "1.97 in")]
    [InlineData(112000, "distance", "112.0 km", "69.6 mi")]
    [InlineData(420, "height", "420 m", "1378 ft")]
    [InlineData(9000, "force", "9.00 kN", "2023 lbf")]
    [InlineData(0.1234, "ratio", "12.3 %", "12.3 %")]
    [InlineData(0.0095, "ratio", "0.95 %", "0.95 %")]
    [InlineData(0.1, "number", "0.100", "0.100")]
    [InlineData(2, "count", "2", "2")]
    [InlineData(-0.074, "slope", "-7.4 %", "-7.4 %")]
    [InlineData(4800, "time", "1 h 20 min", "1 h 20 min")]
    [InlineData(7200, "time", "2 h", "2 h")]
    [InlineData(7199, "time", "2 h", "2 h")]
    [InlineData(3599, "time", "1 h", "1 h")]
    [InlineData(1500, "time", "25 min", "25 min")]
    [InlineData(150, "time", "2 min 30 s", "2 min 30 s")]
    [InlineData(119.7, "time", "2 min", "2 min")]
    [InlineData(59.99, "time", "1 min", "1 min")]
    [InlineData(2.5, "time", "2.5 s", "2.5 s")]
    [InlineData(0, "time", "0 s", "0 s")]
    [InlineData(-4800, "time", "-1 h 20 min", "-1 h 20 min")]
    [InlineData(287.15, "temperature", "14 °C", "57 °F")]
    [InlineData(273.15, "temperature", "0 °C", "32 °F")]
    [InlineData(Math.PI, "angle", "180.0°", "180.0°")]
    [InlineData(7.1e-8, "fuel per distance", "7.1 L/100km", "33.1 us-mpg")]
    [InlineData(1000, "energy per distance", "27.8 kWh/100km", "44.7 kWh/100mi")]
    [InlineData(12.345, "money", "12.35 XXX", "12.35 XXX")]
    [InlineData(double.NaN, "mass", "unknown", "unknown")]
    [InlineData(double.PositiveInfinity, "speed", "unlimited", "unlimited")]
    public void A_value_is_written_in_the_units_of_its_kind(double si, string kind, string metric, string us)
    {
        QuantityWriter.Write(si, Kind(kind), DisplaySystem.Metric).Should().Be(metric);
        QuantityWriter.Write(si, Kind(kind), DisplaySystem.Us).Should().Be(us);
    }

    [Theory]
    [InlineData(2.5, 0, "3")]
    [InlineData(-2.5, 0, "-3")]
    [InlineData(0.5, 0, "1")]
    [InlineData(0.49999, 0, "0")]
    [InlineData(-0.4, 0, "0")]
    [InlineData(1.005, 2, "1.01")]
    [InlineData(2.4999999999999996, 0, "3")]
    [InlineData(9.995, 2, "10.00")]
    [InlineData(0.96, 1, "1.0")]
    [InlineData(999.95, 1, "1000.0")]
    [InlineData(0.06, 1, "0.1")]
    [InlineData(0.04, 1, "0.0")]
    [InlineData(1183, -1, "1180")]
    [InlineData(1185, -1, "1190")]
    [InlineData(96, -2, "100")]
    [InlineData(1e20, 1, "100000000000000000000.0")]
    [InlineData(1e-20, 3, "0.000")]
    [InlineData(123456789.125, 2, "123456789.13")]
    [InlineData(0, 3, "0.000")]
    public void A_number_is_rounded_once_and_half_away_from_zero(double number, int decimals, string expected) =>
        QuantityWriter.Write(number, Units.One, decimals).Should().Be(expected);

    [Theory]
    [InlineData(10400, "10_400 kg")]
    [InlineData(1234567.5, "1_234_567.5 kg")]
    [InlineData(-10400, "-10_400 kg")]
    [InlineData(2950, "2950 kg")]
    public void Thousands_are_grouped_when_asked_for(double si, string expected) =>
        QuantityWriter.Write(si, Units.Kilogram, expected.Contains('.') ? 1 : 0, grouped: true).Should().Be(expected);

    [Theory]
    [InlineData(0.18, 0.0394, "%", "18 % ± 4 %")]
    [InlineData(0.183, 0.0134, "%", "18.3 % ± 1.3 %")]
    [InlineData(1183, 152, "kg", "1180 kg ± 150 kg")]
    [InlineData(1183.4, 15.2, "kg", "1183 kg ± 15 kg")]
    [InlineData(1183.4, 9.7, "kg", "1183 kg ± 10 kg")]
    [InlineData(1183.4, 0.96, "kg", "1183.4 kg ± 1.0 kg")]
    [InlineData(287.15, 2, "°C", "14 °C ± 2 °C")]
    [InlineData(1183.4, 0, "kg", "1183 kg")]
    [InlineData(1183.4, double.NaN, "kg", "1183 kg")]
    [InlineData(double.NaN, 1, "kg", "unknown")]
    public void A_half_width_sets_the_digits_of_both(double si, double half, string unit, string expected) =>
        QuantityWriter.WriteWithHalfWidth(si, half, UnitTable.Find(unit)!).Should().Be(expected);

    [Theory]
    [InlineData("2950 kg", 1195.44, "1195 kg")]
    [InlineData("1.50 t", 1195.44, "1.20 t")]
    [InlineData("33 ft 4 in", 10.0, "32 ft 10 in")]
    [InlineData("33 ft 4 in", 10.05840000001, "33 ft")]
    [InlineData("33 ft 4 in", 3.04, "10 ft")]
    [InlineData("33 ft 4 in", 0.1, "4 in")]
    [InlineData("33 ft 4 in", -0.5, "-1 ft 8 in")]
    [InlineData("39-1/4 in", 1, "39.37 in")]
    [InlineData("9 kN", 90, "0.09 kN")]
    public void A_result_is_written_like_the_fact_beside_it(string like, double si, string expected)
    {
        var measure = Written.Read(like, QuantityKinds.Length, QuantityKinds.Mass, QuantityKinds.Force).Measure!;

        QuantityWriter.WriteLike(si, measure).Should().Be(expected);
    }

    [Theory]
    [InlineData("1:16", 0.05, "1:20")]
    [InlineData("1:16", -0.05, "-1:20")]
    [InlineData("1:16", 0.4, "40 %")]
    [InlineData("1:16", 0, "0 %")]
    [InlineData("3.4°", 1, "45.0°")]
    public void A_slope_is_written_like_its_author_wrote_it(string like, double si, string expected) =>
        QuantityWriter.WriteLike(si, Written.Read(like, QuantityKinds.Slope).Measure!).Should().Be(expected);

    [Fact]
    public void A_value_over_its_limit_never_reads_the_same_as_the_limit()
    {
        var limit = Written.Read("2950 kg", QuantityKinds.Mass).Measure!;

        QuantityWriter.WriteAgainst(2950.2, limit).Should().Be("2950.2 kg");
        QuantityWriter.WriteAgainst(2950.0000001, limit).Should().Be("2950 kg");
        QuantityWriter.WriteAgainst(3011.6, limit).Should().Be("3012 kg");
        QuantityWriter.WriteAgainst(double.NaN, limit).Should().Be("unknown");
    }

    [Theory]
    [InlineData("3500 lb", "mass", "1587.6 kg")]
    [InlineData("2950 kg ± 15 kg", "mass", "6504 lb ± 33 lb")]
    [InlineData("50 mm", "size", "1.97 in")]
    [InlineData("2-5/16 in", "size", "58.7 mm")]
    [InlineData("14 °C", "temperature", "57 °F")]
    [InlineData("7.1 L/100km", "fuel per distance", "33.1 us-mpg")]
    [InlineData("33 ft 4 in", "length", "10.16 m")]
    [InlineData("88 %", "ratio", null)]
    [InlineData("0.62 AUD/kWh", "price of energy", null)]
    [InlineData("25 min", "time", null)]
    [InlineData("400 A", "current", null)]
    public void The_other_system_gets_the_precision_that_was_written(string text, string kind, string? expected) =>
        QuantityWriter.WriteInOtherSystem(Written.Read(text, Kind(kind)).Measure!).Should().Be(expected);

    [Theory]
    [InlineData(12.5, "EUR", "12.50 EUR")]
    [InlineData(1250.4, "JPY", "1250 JPY")]
    [InlineData(1.2345, "KWD", "1.235 KWD")]
    [InlineData(double.NaN, "EUR", "unknown")]
    public void Money_has_the_digits_of_its_currency(double amount, string code, string expected) =>
        QuantityWriter.WriteMoney(amount, code).Should().Be(expected);

    [Fact]
    public void A_measure_made_by_code_is_written_like_any_other()
    {
        Measure.Of(QuantityKinds.Ratio, 88, Units.Percent, 0, 2).Text.Should().Be("88 % ± 2 %");
        Measure.Of(QuantityKinds.Temperature, 15, Units.Celsius, 0).Value.Should().BeApproximately(288.15, 1e-12);
        Written.Read("4.2 kN", QuantityKinds.Force).Measure!.With(4451).Text.Should().Be("4.5 kN");
    }
}
