namespace RigLang.Quantities.Tests;

public class MeasureReaderTests
{
    private static QuantityKind Kind(string name) => QuantityKinds.All.Single(kind => kind.Name == name);

    [Theory]
    [InlineData("2.88 m", "length", 2.88, 0)]
    [InlineData("157 in", "length", 3.9878, 0)]
    [InlineData("2-5/16 in", "size", 0.0587375, 0)]
    [InlineData("33 ft 4 in", "length", 10.16, 0)]
    [InlineData("-1 ft 6 in", "length", -0.4572, 0)]
    [InlineData("112 km", "distance", 112000, 0)]
    [InlineData("1 h 20 min", "time", 4800, 0)]
    [InlineData("1 h 20 min 30 s", "time", 4830, 0)]
    [InlineData("3 lb 8 oz", "mass", 1.5875732950000002, 0)]
    [InlineData("75 lb + 60 lb", "mass", 135 * 0.45359237, 0)]
    [InlineData("2 x 17 kg", "mass", 34, 0)]
    [InlineData("2 x 11 kg + 4 kg", "mass", 26, 0)]
    [InlineData("100 kg - 2 x 9 kg", "mass", 82, 0)]
    [InlineData("2 x 12 kg + 16 kg ± 1 kg", "mass", 40, 1)]
    [InlineData("1790 kg ± 15 kg", "mass", 1790, 15)]
    [InlineData("1790 kg ± 5 %", "mass", 1790, 89.5)]
    [InlineData("91 kWh ± 2 %", "energy", 91 * 3.6e6, 91 * 7.2e4)]
    [InlineData("88 % ± 2 %", "ratio", 0.88, 0.02)]
    [InlineData("0.0095 ± 0.0005", "ratio", 0.0095, 0.0005)]
    [InlineData("0.32 ± 5 %", "number", 0.32, 0.016)]
    [InlineData("2", "count", 2, 0)]
    [InlineData("14 °C ± 2 K", "temperature", 287.15, 2)]
    [InlineData("57 °F ± 9 °F", "temperature", 287.0388888888889, 5)]
    [InlineData("6.5 %", "slope", 0.065, 0)]
    [InlineData("6.5 % ± 1 %", "slope", 0.065, 0.01)]
    [InlineData("1:16", "slope", 0.0625, 0)]
    [InlineData("45 °", "slope", 1, 0)]
    [InlineData("45 deg", "slope", 1, 0)]
    [InlineData("45 ° ± 1 °", "slope", 1, 2 * Math.PI / 180)]
    [InlineData("7.1 L/100km", "fuel per distance", 7.1e-8, 0)]
    [InlineData("30 us-mpg", "fuel per distance", 0.003785411784 / 1609.344 / 30, 0)]
    [InlineData("20 km/L ± 2 km/L", "fuel per distance", 5e-8, 5e-9)]
    [InlineData("850 lbf·ft", "torque", 850 * 1.3558179483314004, 0)]
    [InlineData("0.62 AUD/kWh", "price of energy", 0.62 / 3.6e6, 0)]
    [InlineData("0.0148 lbf/mph²", "force per speed squared", 0.0148 * 4.4482216152605 / (0.44704 * 0.44704), 0)]
    [InlineData("1 ft ± 1/2 in", "length", 0.3048, 0.0127)]
    [InlineData("10 ft ± 1 ft 1 in", "length", 3.048, 0.3302)]
    public void A_measure_is_read_into_si(string text, string kind, double value, double half)
    {
        var reading = Written.Read(text, Kind(kind));

        reading.Problems.Should().BeEmpty();
        reading.Measure!.Value.Should().BeApproximately(value, 1e-12 * Math.Abs(value));
        reading.Measure.HalfWidth.Should().BeApproximately(half, 1e-12 * half);
        reading.Measure.Text.Should().Be(text.Replace(" °", text.Contains("°C") || text.Contains("°F") ? " °" : "°"));
    }

    [Theory]
    [InlineData("5", "length", QuantityProblemKind.Unit, QuantitySpot.Part, "5 m")]
    [InlineData("75 + 60 lb", "mass", QuantityProblemKind.Unit, QuantitySpot.Part, "75 lb")]
    [InlineData("6.5", "slope", QuantityProblemKind.Unit, QuantitySpot.Part, "6.5 %")]
    [InlineData("5 KM", "distance", QuantityProblemKind.Unit, QuantitySpot.Unit, "km")]
    [InlineData("250 kg", "force", QuantityProblemKind.Unit, QuantitySpot.Unit, "2.452 kN")]
    [InlineData("250 lb", "force", QuantityProblemKind.Unit, QuantitySpot.Unit, "250 lbf")]
    [InlineData("2 kN", "mass", QuantityProblemKind.Unit, QuantitySpot.Unit, "203.9 kg")]
    [InlineData("0.3 g", "acceleration", QuantityProblemKind.Unit, QuantitySpot.Unit, "2.942 m/s²")]
    [InlineData("30 %", "number", QuantityProblemKind.Unit, QuantitySpot.Unit, "0.3")]
    [InlineData("2 kg", "count", QuantityProblemKind.Unit, QuantitySpot.Unit, "2")]
    [InlineData("1,5 t", "mass", QuantityProblemKind.Number, QuantitySpot.Number, "1.5")]
    [InlineData("5/16 kg", "mass", QuantityProblemKind.NumberForm, QuantitySpot.Number, "0.3125")]
    [InlineData("5/16 mm", "size", QuantityProblemKind.NumberForm, QuantitySpot.Number, "0.3125")]
    [InlineData("1:16", "ratio", QuantityProblemKind.NumberForm, QuantitySpot.Number, null)]
    [InlineData("1:16 %", "slope", QuantityProblemKind.NumberForm, QuantitySpot.Unit, null)]
    [InlineData("4 in 33 ft", "length", QuantityProblemKind.Compound, QuantitySpot.Part, null)]
    [InlineData("5 ft 3 ft", "length", QuantityProblemKind.Compound, QuantitySpot.Part, null)]
    [InlineData("1.5 ft 3 in", "length", QuantityProblemKind.Compound, QuantitySpot.Number, null)]
    [InlineData("5 ft -3 in", "length", QuantityProblemKind.Compound, QuantitySpot.Number, null)]
    [InlineData("20 °C 3 K", "temperature", QuantityProblemKind.Compound, QuantitySpot.Part, null)]
    [InlineData("5 ft 3 lb", "length", QuantityProblemKind.Unit, QuantitySpot.Unit, null)]
    [InlineData("14 °C + 3 °C", "temperature", QuantityProblemKind.Sum, QuantitySpot.Unit, null)]
    [InlineData("2 x 14 °C", "temperature", QuantityProblemKind.Sum, QuantitySpot.Unit, null)]
    [InlineData("3 ° + 1 °", "slope", QuantityProblemKind.Sum, QuantitySpot.Unit, null)]
    [InlineData("5 EUR + 3 USD", "money", QuantityProblemKind.Sum, QuantitySpot.Unit, null)]
    [InlineData("0.5 x 9 kg", "mass", QuantityProblemKind.NotACount, QuantitySpot.Count, null)]
    [InlineData("-2 x 9 kg", "mass", QuantityProblemKind.NotACount, QuantitySpot.Count, null)]
    [InlineData("2.5", "count", QuantityProblemKind.NotACount, QuantitySpot.Whole, null)]
    [InlineData("-1", "count", QuantityProblemKind.NotACount, QuantitySpot.Whole, null)]
    [InlineData("0 us-mpg", "fuel per distance", QuantityProblemKind.NoValue, QuantitySpot.Whole, null)]
    [InlineData("90 °", "slope", QuantityProblemKind.NoValue, QuantitySpot.Whole, null)]
    [InlineData("-300 °C", "temperature", QuantityProblemKind.NoValue, QuantitySpot.Whole, null)]
    [InlineData("2 ± 1", "count", QuantityProblemKind.HalfWidth, QuantitySpot.Whole, null)]
    [InlineData("14 °C ± 5 %", "temperature", QuantityProblemKind.HalfWidth, QuantitySpot.Part, null)]
    [InlineData("5 kg ± -1 kg", "mass", QuantityProblemKind.HalfWidth, QuantitySpot.Number, null)]
    [InlineData("5 kg ± 15", "mass", QuantityProblemKind.Unit, QuantitySpot.Part, "15 kg")]
    [InlineData("88 % ± 2", "ratio", QuantityProblemKind.HalfWidth, QuantitySpot.Part, "2 %")]
    [InlineData("0.0095 ± 5 %", "ratio", QuantityProblemKind.HalfWidth, QuantitySpot.Part, "0.000475")]
    [InlineData("5 kg ± 1 lbf", "mass", QuantityProblemKind.Unit, QuantitySpot.Unit, null)]
    [InlineData("5 EUR ± 1 USD", "money", QuantityProblemKind.HalfWidth, QuantitySpot.Unit, null)]
    public void A_measure_that_makes_no_sense_is_refused_at_its_place(string text, string kind, QuantityProblemKind expected, QuantitySpot spot, string? fix)
    {
        var reading = Written.Read(text, Kind(kind));

        reading.Measure.Should().BeNull();
        var problem = reading.Problems.Should().ContainSingle().Subject;
        problem.IsError.Should().BeTrue();
        problem.Kind.Should().Be(expected);
        problem.Place.Spot.Should().Be(spot);
        problem.Message.Should().NotBeEmpty();
        if (fix is not null)
            problem.Fixes[0].NewText.Should().Be(fix);
    }

    [Theory]
    [InlineData("5 ft 14 in", "length", QuantityProblemKind.Compound)]
    [InlineData(".5 m", "length", QuantityProblemKind.Number)]
    [InlineData("5 m ± .5 m", "length", QuantityProblemKind.Number)]
    [InlineData("5 m ± .5 %", "length", QuantityProblemKind.Number)]
    public void What_is_only_odd_is_read_and_mentioned(string text, string kind, QuantityProblemKind expected)
    {
        var reading = Written.Read(text, Kind(kind));

        reading.Measure.Should().NotBeNull();
        reading.HasErrors.Should().BeFalse();
        reading.Problems.Should().ContainSingle().Which.Kind.Should().Be(expected);
    }

    [Theory]
    [InlineData("60 %", "ratio")]
    [InlineData("32 L", "volume")]
    [InlineData("8 us-gal", "volume")]
    [InlineData("40 km", "distance")]
    public void One_of_several_kinds_is_told_by_the_unit(string text, string kind)
    {
        var reading = Written.Read(text, QuantityKinds.Ratio, QuantityKinds.Volume, QuantityKinds.Distance);

        reading.Measure!.Kind.Name.Should().Be(kind);
    }

    [Fact]
    public void What_is_none_of_several_kinds_is_refused_with_the_units_of_all()
    {
        var reading = Written.Read("32 kg", QuantityKinds.Ratio, QuantityKinds.Volume);

        reading.Problems.Should().ContainSingle().Which.Message.Should().Contain("ratio or volume").And.Contain("%").And.Contain("L");
    }

    [Fact]
    public void The_converted_figure_is_in_the_message()
    {
        var problem = Written.Read("250 kg", QuantityKinds.Force).Problems.Single();

        problem.Message.Should().Be("`kg` is a unit of mass, and a force is wanted; 250 kg weighs 2.452 kN");
        problem.Fixes[0].Place.Spot.Should().Be(QuantitySpot.Part);
    }

    [Fact]
    public void Both_places_of_a_sum_are_told_apart()
    {
        Written.Read("5 kg + 3 lbs", QuantityKinds.Mass).Problems.Single().Place.Should().Be(new QuantityPlace(1, 0, QuantitySpot.Unit));
        Written.Read("5 ft 3 inch", QuantityKinds.Length).Problems.Single().Place.Should().Be(new QuantityPlace(0, 1, QuantitySpot.Unit));
        Written.Read("5 kg ± 3 lbs", QuantityKinds.Mass).Problems.Single().Place.IsHalfWidth.Should().BeTrue();
    }

    [Fact]
    public void Nothing_at_all_is_refused()
    {
        MeasureReader.Read([], null, QuantityKinds.Mass).Measure.Should().BeNull();
        MeasureReader.Read([new(false, null, [])], [], QuantityKinds.Mass).HasErrors.Should().BeTrue();
        MeasureReader.Read([new(false, null, [new("5", "kg")])], [], QuantityKinds.Mass).HasErrors.Should().BeTrue();
        MeasureReader.Read([new(false, null, [new("5", "kg")])], null, []).HasErrors.Should().BeTrue();
    }

    [Fact]
    public void The_author_s_unit_and_digits_are_kept()
    {
        var measure = Written.Read("1.80 t + 40 kg", QuantityKinds.Mass).Measure!;

        measure.Unit.Should().BeSameAs(Units.Tonne);
        measure.Decimals.Should().Be(2);
        Written.Read("33 ft 4.5 in", QuantityKinds.Length).Measure!.Decimals.Should().Be(1);
    }

    [Fact]
    public void The_same_text_read_twice_is_an_equal_measure()
    {
        var first = Written.Read("33 ft 4 in ± 1 in", QuantityKinds.Length).Measure!;
        var second = Written.Read("33 ft 4 in ± 1 in", QuantityKinds.Length).Measure!;

        second.Should().Be(first).And.NotBeSameAs(first);
        second.GetHashCode().Should().Be(first.GetHashCode());
        second.Should().NotBe(Written.Read("33 ft 5 in ± 1 in", QuantityKinds.Length).Measure!);
    }

    [Theory]
    [InlineData("85 km", "speed", "km/h")]
    [InlineData("110 kN", "cornering stiffness", "kN/rad")]
    [InlineData("0.62 AUD", "price of energy", "AUD/kWh")]
    [InlineData("45 m", "time", "min")]
    [InlineData("36 lb", "gauge pressure", "psi")]
    public void The_beginning_of_the_unit_that_is_wanted_is_completed(string text, string kind, string fix) =>
        Written.Read(text, Kind(kind)).Problems.Single().Fixes[0].NewText.Should().Be(fix);

    [Fact]
    public void Another_dimension_has_no_fix_since_the_figure_would_be_wrong() =>
        Written.Read("2.94 kg", QuantityKinds.Length).Problems.Single().Fixes.Should().BeEmpty();

    [Fact]
    public void A_bare_number_does_not_tell_which_of_several_kinds_it_is() =>
        Written.Read("60", QuantityKinds.Ratio, QuantityKinds.Volume).Problems.Single().Fixes[0].NewText.Should().Be("60 %");

    [Fact]
    public void Equal_values_are_equal_whatever_the_unit()
    {
        var pounds = Written.Read("3500 lb", QuantityKinds.Mass).Measure!;

        Measure.SameValue(pounds, Written.Read("1587.573295 kg", QuantityKinds.Mass).Measure!).Should().BeTrue();
        Measure.SameValue(pounds, Written.Read("1587.6 kg", QuantityKinds.Mass).Measure!).Should().BeFalse();
        Measure.SameRewritten(pounds, Written.Read("1587.6 kg", QuantityKinds.Mass).Measure!).Should().BeTrue();
        Measure.SameRewritten(pounds, Written.Read("1586 kg", QuantityKinds.Mass).Measure!).Should().BeFalse();
        Measure.SameRewritten(pounds, Written.Read("3501 lb", QuantityKinds.Mass).Measure!).Should().BeFalse();
        Measure.SameValue(Written.Read("5 EUR", QuantityKinds.Money).Measure!, Written.Read("5 USD", QuantityKinds.Money).Measure!).Should().BeFalse();
    }
}
