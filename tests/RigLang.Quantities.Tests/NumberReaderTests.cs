namespace RigLang.Quantities.Tests;

public class NumberReaderTests
{
    [Theory]
    [InlineData("0", 0, 0, 1)]
    [InlineData("2.88", 2.88, 2, 3)]
    [InlineData("10_400", 10400, 0, 5)]
    [InlineData("1_0.2_5", 10.25, 2, 4)]
    [InlineData("0.0095", 0.0095, 4, 2)]
    [InlineData("-7.4", -7.4, 1, 2)]
    [InlineData("−7.4", -7.4, 1, 2)]
    [InlineData("+5", 5, 0, 1)]
    [InlineData("5/16", 0.3125, 2, 2)]
    [InlineData("2-5/16", 2.3125, 2, 3)]
    [InlineData("1-1/4", 1.25, 2, 3)]
    [InlineData("-2-5/16", -2.3125, 2, 3)]
    [InlineData("1:16", 0.0625, 0, 2)]
    [InlineData("-1:16", -0.0625, 0, 2)]
    [InlineData("0.1", 0.1, 1, 1)]
    [InlineData("123456789012345678901234567890", 123456789012345678901234567890d, 0, 30)]
    public void A_number_is_read(string text, double expected, int decimals, int significant)
    {
        NumberReader.TryRead(text, out var value, out var form, out var problem).Should().BeTrue();

        problem.Should().BeNull();
        value.Should().Be(expected);
        form.Decimals.Should().Be(decimals);
        form.SignificantDigits.Should().Be(significant);
    }

    [Theory]
    [InlineData("-0")]
    [InlineData("-0.00")]
    public void There_is_no_minus_zero(string text)
    {
        NumberReader.TryRead(text, out var value, out _, out _).Should().BeTrue();
        double.IsNegative(value).Should().BeFalse();
    }

    [Theory]
    [InlineData(".5", 0.5, "0.5")]
    [InlineData("-.5", -0.5, "-0.5")]
    public void A_missing_zero_is_read_and_mentioned(string text, double expected, string better)
    {
        NumberReader.TryRead(text, out var value, out _, out var problem).Should().BeTrue();

        value.Should().Be(expected);
        problem!.Kind.Should().Be(NumberProblemKind.LeadingZero);
        problem.IsError.Should().BeFalse();
        problem.Suggestions.Should().Equal(better);
    }

    [Theory]
    [InlineData("1,5", NumberProblemKind.Comma, "1.5")]
    [InlineData("1,500", NumberProblemKind.Comma, "1.500,1500")]
    [InlineData("12,500", NumberProblemKind.Comma, "12.500,12_500")]
    [InlineData("1.234,5", NumberProblemKind.Comma, "1234.5")]
    [InlineData("1,234.5", NumberProblemKind.Comma, "1234.5")]
    [InlineData("1,234,567", NumberProblemKind.Comma, "1_234_567")]
    [InlineData("1'500", NumberProblemKind.Comma, "1500")]
    [InlineData("1e3", NumberProblemKind.Exponent, "1000")]
    [InlineData("2.5E-3", NumberProblemKind.Exponent, "0.0025")]
    [InlineData("1e400", NumberProblemKind.Exponent, "")]
    [InlineData("5/0", NumberProblemKind.DividedByZero, "")]
    [InlineData("1:0", NumberProblemKind.DividedByZero, "")]
    [InlineData("2-17/16", NumberProblemKind.ImproperFraction, "3.0625")]
    [InlineData("", NumberProblemKind.Missing, "")]
    [InlineData("-", NumberProblemKind.Missing, "")]
    [InlineData("5.", NumberProblemKind.Malformed, "5")]
    [InlineData(".", NumberProblemKind.Malformed, "")]
    [InlineData("1.2.3", NumberProblemKind.Malformed, "1_2_3")]
    [InlineData("_5", NumberProblemKind.Malformed, "")]
    [InlineData("--5", NumberProblemKind.Malformed, "")]
    [InlineData("1-2", NumberProblemKind.Malformed, "")]
    [InlineData("1/2-3", NumberProblemKind.Malformed, "")]
    [InlineData("1/2/3", NumberProblemKind.Malformed, "")]
    [InlineData("2:16", NumberProblemKind.Malformed, "")]
    [InlineData("٣٫٥", NumberProblemKind.Malformed, "")]
    [InlineData("٣٥", NumberProblemKind.Malformed, "35")]
    [InlineData("½", NumberProblemKind.Malformed, "")]
    [InlineData("NaN", NumberProblemKind.Malformed, "")]
    [InlineData("∞", NumberProblemKind.Malformed, "")]
    [InlineData("0x10", NumberProblemKind.Malformed, "")]
    [InlineData(" 5", NumberProblemKind.Malformed, "")]
    public void What_is_not_a_number_is_refused_with_what_to_write(string text, NumberProblemKind kind, string suggestions)
    {
        NumberReader.TryRead(text, out var value, out _, out var problem).Should().BeFalse();

        value.Should().Be(0);
        problem!.Kind.Should().Be(kind);
        problem.IsError.Should().BeTrue();
        string.Join(',', problem.Suggestions).Should().Be(suggestions);
    }

    [Fact]
    public void A_comma_is_told_in_both_readings()
    {
        NumberReader.TryRead("12,500", out _, out _, out var problem);

        problem!.Message.Should().Contain("12.500").And.Contain("12_500");
    }

    [Fact]
    public void Hundreds_of_digits_are_refused_and_thousands_behind_the_point_are_read()
    {
        NumberReader.TryRead(new string('9', 400), out _, out _, out var problem).Should().BeFalse();
        problem!.Kind.Should().Be(NumberProblemKind.TooLarge);
        NumberReader.TryRead("0." + new string('3', 100_000), out var third, out _, out _).Should().BeTrue();
        third.Should().Be(1.0 / 3);
    }
}
